package unthrum.plan;

import java.util.List;
import java.util.Optional;
import unthrum.facts.Place;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;

/**
 * How what there is was shared among bays and panels. What something brings is the share that it takes of what the bare
 * vehicle gives off, weighted by the client's aims.
 *
 * @param ranking   every place that wants a layer, what brings most first
 * @param nextPacks what one more pack of a material would buy, the best first; empty when nothing was left out for it
 * @param leftOvers what remains of opened packs and of the shelf's goods in use
 */
public record Shares(List<Ranked> ranking, List<NextPack> nextPacks, List<LeftOver> leftOvers, Proof proof) {

    /**
     * One place's claim: a bay's damping, a hole's piece, or all that covers a panel, which brings what it does only
     * together.
     *
     * @param materials what it gets, or would get, from the metal inward
     * @param brings    with its whole cover
     * @param served    the part of it that the plan serves, 0 to 1
     */
    public record Ranked(Place place, List<Material> materials, @Measured(Dimension.AREA) double area,
                         @Measured(Dimension.SHARE) double brings, @Measured(Dimension.SHARE) double served) {

        public boolean has(Layer layer) {
            return materials.stream().anyMatch(m -> m.layer() == layer);
        }
    }

    /**
     * What one more pack would do with all else that is bought as it is, filled in rank as far as mass and panels allow.
     *
     * @param places where it would go, in that order
     */
    public record NextPack(Material material, double price, @Measured(Dimension.SHARE) double brings,
                           List<Place> places) {
    }

    /**
     * What remains of a material.
     *
     * @param amount in m², or pieces
     * @param next the first in rank that could use some and gets none or too little, if mass allows
     */
    public record LeftOver(Material material, double amount, Optional<Place> next) {
    }
}
