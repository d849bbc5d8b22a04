package unthrum.physics;

/** The four cubics that carry value and slope from one end of a stretch to the other. */
final class HermiteCubic {

    private HermiteCubic() {}

    /** Near value, near slope, far value, far slope on a unit length at t, differentiated 0 to 2 times. */
    static double[] at(double t, int derivative) {
        return switch (derivative) {
            case 0 -> new double[] {1 - 3 * t * t + 2 * t * t * t, t - 2 * t * t + t * t * t,
                3 * t * t - 2 * t * t * t, t * t * t - t * t};
            case 1 -> new double[] {6 * t * t - 6 * t, 1 - 4 * t + 3 * t * t, 6 * t - 6 * t * t, 3 * t * t - 2 * t};
            default -> new double[] {12 * t - 6, 6 * t - 4, 6 - 12 * t, 6 * t - 2};
        };
    }

    /** The same on a stretch of that length, slopes and derivatives per unit of its own measure. */
    static double[] at(double t, int derivative, double length) {
        double[] cubics = at(t, derivative);
        double scale = Math.pow(length, -derivative);
        for (int i = 0; i < cubics.length; i++) {
            cubics[i] *= i % 2 == 1 ? scale * length : scale;
        }
        return cubics;
    }
}
