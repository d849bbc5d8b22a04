package unthrum.physics;

/**
 * A stretch of frequencies: the range a bay may ring in, or a band in which it is driven.
 *
 * @param lower Hz
 * @param upper Hz, not below the lower
 */
public record Band(double lower, double upper) {

    /** Drumming of the body on coarse roads. Common practice, no source. */
    public static final Band ROAD_DRUMMING = new Band(50, 400);

    /** Wind noise; the upper end is where sheet-metal panels stop mattering. Common practice, no source. */
    public static final Band WIND = new Band(500, 5000);

    public Band {
        if (!(lower >= 0 && upper >= lower)) {
            throw new IllegalArgumentException("a band runs upwards");
        }
    }

    public boolean contains(double frequency) {
        return frequency >= lower && frequency <= upper;
    }

    /** How much of this range lies inside the other, 0 to 1; a range without width is inside or not. */
    public double shareInside(Band other) {
        if (upper == lower) {
            return other.contains(lower) ? 1 : 0;
        }
        return Math.max(0, Math.min(upper, other.upper) - Math.max(lower, other.lower)) / (upper - lower);
    }
}
