package unthrum.plan;

import java.util.List;
import java.util.Optional;
import unthrum.facts.Place;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;

/**
 * How what there is was shared among bays and panels.
 *
 * @param ranking   every place that wants a layer, what brings most first
 * @param nextPacks what one more pack of a material would buy, the best first; empty when nothing was left out for it
 * @param leftOvers what remains of opened packs and of the shelf's goods in use
 */
public record Shares(List<Ranked> ranking, List<NextPack> nextPacks, List<LeftOver> leftOvers, Proof proof) {

    /**
     * One place's claim.
     *
     * @param material what it gets, or would get
     * @param brings   with its whole cover, in weight points over a square metre
     * @param served   the part of it that the plan serves, 0 to 1
     */
    public record Ranked(Place place, Layer layer, Material material, @Measured(Dimension.AREA) double area,
                         double brings, @Measured(Dimension.SHARE) double served) {
    }

    /**
     * What one more pack would do with all else as it is, filled in rank as far as mass and panels allow.
     *
     * @param brings in weight points over a square metre
     * @param places where it would go, in that order
     */
    public record NextPack(Material material, double price, double brings, List<Place> places) {
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
