package unthrum.reasoning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import unthrum.effect.Laid;
import unthrum.effect.Layup;
import unthrum.effect.Patch;
import unthrum.material.Layer;
import unthrum.material.Material;

/** What may be laid on one panel: whole offers, of which sharing takes one at most. */
public record Options(List<Offer> offers) {

    /** A panel that gets nothing. */
    public static final Options NONE = new Options(List.of());

    /**
     * One way to treat the panel: what covers it, laid whole or not at all, and the damping under it, bay by bay.
     *
     * @param cover   layers but damping, from the metal inward; may be empty
     * @param gain    merit of the cover alone: the share of what the bare vehicle gives off, weighted by the aims; 0.01
     *                is one per cent; 0 for an empty cover
     * @param damping at most one material, with its parts
     * @param safe    whether it holds every layer that safety asks for as far as any offer can
     */
    public record Offer(List<Laid> cover, double gain, Optional<Damped> damping, boolean safe) {

        /** What it brings with everything laid whole. */
        public double whole() {
            return gain + parts().stream().mapToDouble(Part::whole).sum();
        }

        public List<Part> parts() {
            return damping.map(Damped::parts).orElse(List.of());
        }

        /** With everything laid whole, from the metal inward. */
        public Layup layup() {
            List<Laid> layers = new ArrayList<>(cover);
            damping.ifPresent(d -> layers.add(d.laid()));
            layers.sort(Comparator.comparing(Laid::layer));
            return new Layup(layers);
        }

        public boolean has(Layer layer) {
            return Stream.concat(cover.stream().map(Laid::layer), damping.stream().map(d -> d.material().layer()))
                    .anyMatch(layer::equals);
        }
    }

    /** A damping sheet and the bays that it may lie on. */
    public record Damped(Material material, List<Part> parts) {

        Laid laid() {
            return new Laid(material, parts.stream().map(Part::patch).toList());
        }
    }

    /**
     * A bay's patch.
     *
     * @param required whether safety asks for the whole of it
     * @param gains    merit reached with one, two, ... equal pieces of the patch, the last the whole patch
     */
    public record Part(Patch patch, boolean required, List<Double> gains) {

        double whole() {
            return gains.get(gains.size() - 1);
        }
    }
}
