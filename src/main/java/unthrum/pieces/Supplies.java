package unthrum.pieces;

import java.util.List;
import java.util.Optional;
import unthrum.material.Material;

/**
 * What the work takes besides sheets and rolls.
 *
 * @param adhesive    contact adhesive, litres
 * @param hotAdhesive high-temperature contact adhesive, litres
 * @param cleaner     water-based cleaner, litres
 * @param solvent     for the last wipe, litres
 * @param tape        m over joints and edges
 * @param closers     plugs, grommets, strips and plates, by the hole that they close
 */
public record Supplies(double adhesive, double hotAdhesive, double cleaner, double solvent, double tape,
                       Optional<Tape> taping, List<Closer> closers) {

    /** The catalogue's tape and how many packs of it the joints take. */
    public record Tape(Material material, int packs) {

        public double price() {
            return packs * material.price().amount().doubleValue();
        }
    }

    /**
     * What closes holes of one size.
     *
     * @param size  of the hole, m
     * @param count how many
     */
    public record Closer(Material material, double size, int count) {
    }

    /** Of the tape; what closes holes is priced by the plan. */
    public double price() {
        return taping.map(Tape::price).orElse(0.0);
    }
}
