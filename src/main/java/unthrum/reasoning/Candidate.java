package unthrum.reasoning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import unthrum.effect.Laid;
import unthrum.effect.Layup;
import unthrum.material.Figures;
import unthrum.material.Layer;
import unthrum.material.Material;

/** A cover with damping under it or none, on the scales of {@link Scored}; made by the thousand, so its layup comes last. */
record Candidate(Cover cover, Optional<Dampers.Damped> damped, double gain, double worth) {

    /**
     * Covering layers, with what they bring by themselves.
     *
     * @param unpaid their worth if they cost no money
     */
    record Cover(Layup layup, double mass, double thickness, double gain, double trade, double worth, double unpaid) {
    }

    /** What decides between layups that are worth alike; names never do. */
    static final Comparator<Candidate> TIE = Comparator.comparingLong((Candidate c) -> Math.round(c.mass() * 1e6))
            .thenComparingLong(c -> Math.round(c.layup().price() * 1e6))
            .thenComparingLong(c -> Math.round(c.layup().thickness() * 1e9))
            .thenComparingInt(c -> c.layup().layers().size())
            .thenComparing(c -> c.layup().materials(), Figures::byFigures);

    static Candidate of(Cover cover, Optional<Dampers.Damped> damped) {
        return new Candidate(cover, damped, cover.gain + damped.map(Dampers.Damped::gain).orElse(0.0),
                cover.worth + damped.map(Dampers.Damped::worth).orElse(0.0));
    }

    double trade() {
        return cover.trade + damped.map(Dampers.Damped::trade).orElse(0.0);
    }

    double mass() {
        return cover.mass + damped.map(d -> d.laid().mass()).orElse(0.0);
    }

    boolean isEmpty() {
        return cover.layup.isEmpty() && damped.isEmpty();
    }

    boolean has(Layer layer) {
        return cover.layup.has(layer) || layer == Layer.DAMPING && damped.isPresent();
    }

    List<Material> materials() {
        List<Material> materials = new ArrayList<>(cover.layup.materials());
        damped.ifPresent(d -> materials.add(d.laid().material()));
        return materials;
    }

    Layup layup() {
        return damped.map(d -> together(cover.layup, d.laid())).orElse(cover.layup);
    }

    /** The layers from the metal inward. */
    static Layup together(Layup cover, Laid damping) {
        List<Laid> layers = new ArrayList<>(cover.layers());
        layers.add(damping);
        layers.sort(Comparator.comparing(Laid::layer));
        return new Layup(layers);
    }

    Scored scored() {
        return new Scored(layup(), gain, trade(), worth);
    }
}
