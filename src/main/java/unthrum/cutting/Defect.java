package unthrum.cutting;

/**
 * A rectangle of a sheet or offcut from which nothing can be cut: a stain, a crease, a corner cut off. Measured like a
 * {@link Placement}; the knife margin is not needed beside it.
 *
 * @param x      left edge
 * @param y      lower edge
 * @param width  across
 * @param height along
 */
public record Defect(int x, int y, int width, int height) {

    public Defect {
        Lengths.requirePositive("defect", "width", width);
        Lengths.requirePositive("defect", "height", height);
    }

    public int right() {
        return x + width;
    }

    public int top() {
        return y + height;
    }

    /** Whether a rectangle reaches into it. */
    boolean touches(int left, int low, int right, int top) {
        return left < right() && right > x && low < top() && top > y;
    }
}
