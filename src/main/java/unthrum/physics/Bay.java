package unthrum.physics;

/**
 * A rectangular area of skin between its edges, flat or evenly curved.
 *
 * @param length side a, measured along the skin, m
 * @param width side b, measured along the skin, m
 * @param lengthCurvature 1/Rx of the curve seen when walking along the length, 1/m; 0 is straight
 * @param widthCurvature 1/Ry of the curve seen when walking along the width, 1/m; of the other sign on a saddle
 */
public record Bay(double length, double width, double lengthCurvature, double widthCurvature) {

    private static final int ITERATIONS = 40;

    public Bay {
        if (!(length > 0 && width > 0)) {
            throw new IllegalArgumentException("a bay needs a length and a width");
        }
    }

    public static Bay flat(double length, double width) {
        return new Bay(length, width, 0, 0);
    }

    /** Curved both ways, each rise measured from a straight edge laid along that side. */
    public static Bay curved(double length, double width, double lengthRise, double widthRise) {
        return new Bay(length, width, curvature(length, lengthRise), curvature(width, widthRise));
    }

    /** Curved alike both ways (a crown); the rise is measured across the shorter side. */
    public static Bay crowned(double length, double width, double rise) {
        double curvature = curvature(Math.min(length, width), rise);
        return new Bay(length, width, curvature, curvature);
    }

    /** Curved one way only (rolled), around its width. */
    public static Bay rolled(double straightLength, double curvedWidth, double rise) {
        return curved(straightLength, curvedWidth, 0, rise);
    }

    /**
     * Curvature of an arc from its length s and the rise r of its middle: with θ = s/(2R) half the angle,
     * r = s θ/4 · (sin(θ/2)/(θ/2))², solved by iteration. Plane geometry. No arc is taken beyond a half circle.
     */
    static double curvature(double arc, double rise) {
        double straight = 4 * Math.abs(rise) / arc;
        double theta = straight;
        for (int i = 0; i < ITERATIONS && theta > 0; i++) {
            double half = theta / 2;
            theta = Math.min(Math.PI / 2, straight * Math.pow(half / Math.sin(half), 2));
        }
        return Math.signum(rise) * 2 * theta / arc;
    }

    public double area() {
        return length * width;
    }

    public boolean isFlat() {
        return lengthCurvature == 0 && widthCurvature == 0;
    }

    /** The steeper of the two arcs' rise over its own side, (1 − cos θ)/(2θ) with θ = s/(2R). */
    public double riseOverSpan() {
        return Math.max(riseOverSpan(length * lengthCurvature), riseOverSpan(width * widthCurvature));
    }

    private static double riseOverSpan(double angle) {
        double theta = Math.abs(angle) / 2;
        return theta == 0 ? 0 : (1 - Math.cos(theta)) / (2 * theta);
    }

    double shorterSide() {
        return Math.min(length, width);
    }
}
