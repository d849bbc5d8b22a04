package unthrum.physics;

/**
 * The way heat runs through a panel; warm air under a roof holds heat back, warm air over a floor carries it.
 * Coefficients: ISO 6946:2017, table 7 and annex D (annex recalled; the tests hold them against the tables).
 */
public enum HeatDirection {
    UP(0.10, 1.95, 1.14),
    HORIZONTAL(0.13, 1.25, 0.73),
    DOWN(0.17, 0, 0);

    /** Outer surface resistance for ordinary wind, all directions, m²K/W. */
    public static final double OUTER_SURFACE = 0.04;

    /** Thickest air layer to which the gap formulas apply, m. */
    public static final double DEEPEST_GAP = 0.3;

    private static final double STILL_AIR_CONDUCTIVITY = 0.025;

    private final double innerSurface;
    private final double smallGapConvection;
    private final double largeGapConvection;

    HeatDirection(double innerSurface, double smallGap, double largeGap) {
        this.innerSurface = innerSurface;
        this.smallGapConvection = smallGap;
        this.largeGapConvection = largeGap;
    }

    /** Tabled inner surface resistance for a dull face (emissivity about 0.9), m²K/W. */
    public double innerSurface() {
        return innerSurface;
    }

    /**
     * Convection or conduction across a closed air gap, whichever is larger, W/(m²·K). The standard changes formula at
     * a difference of 5 K; the larger of both is taken, which joins them without a step and differs by 1.3 % at most.
     *
     * @param depth      of the gap, m
     * @param difference of temperature between its faces, K
     */
    double gapConvection(double depth, double difference) {
        double moving = this == DOWN
                ? Math.max(0.12, 0.09 * Math.pow(difference, 0.187)) * Math.pow(depth, -0.44)
                : Math.max(smallGapConvection, largeGapConvection * Math.cbrt(difference));
        return Math.max(STILL_AIR_CONDUCTIVITY / depth, moving);
    }
}
