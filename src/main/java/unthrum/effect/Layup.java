package unthrum.effect;

import java.util.List;
import java.util.Optional;
import unthrum.material.Layer;
import unthrum.material.Material;

/** The ordered layers on one panel, from the metal inward. */
public record Layup(List<Laid> layers) {

    public static final Layup NOTHING = new Layup(List.of());

    public boolean isEmpty() {
        return layers.isEmpty();
    }

    public Optional<Laid> of(Layer layer) {
        return layers.stream().filter(l -> l.layer() == layer).findFirst();
    }

    public boolean has(Layer layer) {
        for (Laid laid : layers) {
            if (laid.layer() == layer) {
                return true;
            }
        }
        return false;
    }

    /** Layers but damping: a damping patch is no insulation. */
    public Layup withoutDamping() {
        return new Layup(layers.stream().filter(l -> l.layer() != Layer.DAMPING).toList());
    }

    /** Thickness of the stack toward the trim in m. */
    public double thickness() {
        return layers.stream().mapToDouble(Laid::stackThickness).sum();
    }

    /** From the metal inward. */
    public List<Material> materials() {
        return layers.stream().map(Laid::material).toList();
    }

    /** Mass in kg. */
    public double mass() {
        return layers.stream().mapToDouble(Laid::mass).sum();
    }

    /** Price of what is used, in the catalogue's currency. */
    public double price() {
        return layers.stream().mapToDouble(Laid::price).sum();
    }

    @Override
    public String toString() {
        return isEmpty() ? "nothing"
                : String.join(" + ", layers.stream().map(l -> l.material().material()).toList());
    }
}
