package unthrum.cutting;

/**
 * One piece on a sheet, measured from the sheet's lower left corner in tenths of a millimetre.
 *
 * @param piece  the name of the piece
 * @param x      left edge
 * @param y      lower edge
 * @param width  width as placed
 * @param height height as placed
 * @param turned whether it lies turned by a quarter
 */
public record Placement(String piece, int x, int y, int width, int height, boolean turned) {

    public int right() {
        return x + width;
    }

    public int top() {
        return y + height;
    }
}
