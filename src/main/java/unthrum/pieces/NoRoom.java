package unthrum.pieces;

/**
 * A piece that cannot be cut.
 *
 * @param tooLarge whether it fits no sheet at all, and is not joined
 * @param packs    how many packs more would give room for all pieces of its material; 0 when too large
 * @param price    of those packs
 */
public record NoRoom(CutPiece piece, boolean tooLarge, int packs, double price) {
}
