package unthrum.physics;

/**
 * Strains at one place of a straight strip that leans and rises as it runs along: rows of coefficients, one for every
 * field (u, v, w, θ at the near line, then at the far one) and order of its derivative along.
 *
 * <p>Stretching: r,ᵢ·U,ⱼ of the true surface r, in two directions square to each other, with motion linear across.
 * Bending: second derivatives of the motion square to the strip, a cubic across; the slope along is left out of it.
 */
final class StripStrains {

    /** Fields of one line. */
    static final int LINE = 4;
    /** Orders of the derivative along: 0 to 2. */
    static final int ORDERS = 3;
    static final int TERMS = 2 * LINE * ORDERS;

    private final double slope;
    private final double climb;
    private final double width;
    private final double t;
    private final double along;
    private final double lean;
    private final double stride;
    private final double slant;

    /**
     * @param slope of the surface along
     * @param climb of the strip across
     * @param width of the strip in plan, m
     * @param t share of that width
     */
    StripStrains(double slope, double climb, double width, double t) {
        this.slope = slope;
        this.climb = climb;
        this.width = width;
        this.t = t;
        this.along = Math.sqrt(1 + slope * slope);
        this.lean = slope * climb / (along * along);
        this.stride = Math.sqrt(lean * lean + 1 + Math.pow(climb - lean * slope, 2));
        this.slant = Math.sqrt(1 + climb * climb);
    }

    /** Of the surface over its plan. */
    double area() {
        return along * stride;
    }

    /** Along, across, shear. */
    double[][] stretching() {
        double[][] rows = new double[3][TERMS];
        double[] first = {1 / along, 0, slope / along};
        double[] second = {-lean / stride, 1 / stride, (climb - lean * slope) / stride};
        for (int side = 0; side < 2; side++) {
            double share = side == 0 ? 1 - t : t;
            double change = (side == 0 ? -1 : 1) / (width * stride);
            for (int f = 0; f < 3; f++) {
                int i = (side * LINE + f) * ORDERS;
                rows[0][i + 1] = first[f] * share / along;
                rows[1][i] = second[f] * change;
                rows[1][i + 1] = -second[f] * lean * share / stride;
                rows[2][i] = first[f] * change;
                rows[2][i + 1] = (second[f] / along - first[f] * lean / stride) * share;
            }
        }
        return rows;
    }

    /** Along, across, twist. */
    double[][] bending() {
        double span = width * slant;
        return new double[][] {
            out(2, 0, 1 / (along * along)), out(0, 2, 1 / (span * span)), out(1, 1, 1 / (span * along))
        };
    }

    /** Motion square to the strip, and across within it. */
    double[][] motion() {
        double[] across = new double[TERMS];
        for (int side = 0; side < 2; side++) {
            double share = side == 0 ? 1 - t : t;
            across[(side * LINE + 1) * ORDERS] = share / slant;
            across[(side * LINE + 2) * ORDERS] = share * climb / slant;
        }
        return new double[][] {out(0, 0, 1), across};
    }

    private double[] out(int along, int across, double factor) {
        double[] row = new double[TERMS];
        double[] h = HermiteCubic.at(t, across);
        for (int side = 0; side < 2; side++) {
            int i = side * LINE * ORDERS + along;
            row[i + ORDERS] = -factor * h[2 * side] * climb / slant;
            row[i + 2 * ORDERS] = factor * h[2 * side] / slant;
            row[i + 3 * ORDERS] = factor * h[2 * side + 1] * width * slant;
        }
        return row;
    }
}
