package unthrum.cutting;

/**
 * A rectangular piece to be cut, all its copies together. Lengths are whole tenths of a millimetre.
 *
 * @param name    what the fitter calls it; unique within a task
 * @param width   across the sheet
 * @param height  along the sheet, the way the material's direction runs
 * @param count   how many copies are needed
 * @param mayTurn whether it may be turned by a quarter; false for material with a direction
 */
public record Piece(String name, int width, int height, int count, boolean mayTurn) {

    public Piece {
        Lengths.requirePositive("piece " + name, "width", width);
        Lengths.requirePositive("piece " + name, "height", height);
        Lengths.requirePositive("piece " + name, "count", count);
    }

    /** Whether one copy can be cut from the stock. */
    public boolean fitsInto(Stock stock) {
        return stock.yields(width, height) || mayTurn && stock.yields(height, width);
    }
}
