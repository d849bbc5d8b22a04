package unthrum.pieces;

import java.util.List;
import unthrum.material.Material;

/**
 * Pieces of one material that cannot be cut.
 *
 * @param tooLarge whether they fit no sheet at all, and this material is not joined
 * @param packs    how many packs more would give room for them; 0 when too large
 * @param price    of those packs
 */
public record Shortfall(Material material, List<CutPiece> pieces, boolean tooLarge, int packs, double price) {

    public Shortfall {
        pieces = List.copyOf(pieces);
    }

    /** In m². */
    public double area() {
        return pieces.stream().mapToDouble(CutPiece::area).sum();
    }
}
