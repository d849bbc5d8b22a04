package unthrum.pieces;

import java.util.List;

/**
 * All pieces of a plan.
 *
 * @param pieces in the order of the survey's panels, from the metal inward
 * @param onSite what is cut clear on the vehicle
 */
public record Pieces(List<CutPiece> pieces, List<OnSite> onSite) {

    public Pieces {
        pieces = List.copyOf(pieces);
        onSite = List.copyOf(onSite);
    }
}
