package unthrum.physics;

/**
 * The way heat runs through a panel; warm air under a roof holds heat back, warm air over a floor carries it.
 * Coefficients: ISO 6946:2017, table 7 and annexes C and D (annexes recalled; the tests hold them against the tables).
 */
public enum HeatDirection {
    UP(0.10, 5.0, 1.95, 1.14),
    HORIZONTAL(0.13, 2.5, 1.25, 0.73),
    DOWN(0.17, 0.7, 0, 0);

    /** Outer surface resistance for ordinary wind, all directions, m²K/W. */
    public static final double OUTER_SURFACE = 0.04;

    /** Thickest air layer to which the gap formulas apply, m. */
    public static final double DEEPEST_GAP = 0.3;

    private static final double STILL_AIR_CONDUCTIVITY = 0.025;

    private final double innerSurface;
    private final double innerConvection;
    private final double smallGapConvection;
    private final double largeGapConvection;

    HeatDirection(double innerSurface, double innerConvection, double smallGap, double largeGap) {
        this.innerSurface = innerSurface;
        this.innerConvection = innerConvection;
        this.smallGapConvection = smallGap;
        this.largeGapConvection = largeGap;
    }

    /** Tabled inner surface resistance for a dull face (emissivity about 0.9), m²K/W. */
    public double innerSurface() {
        return innerSurface;
    }

    /** Inner surface resistance for a face of any emissivity, 1/(h_c + ε·4σT³), m²K/W. */
    public double innerSurface(double emissivity, double meanCelsius) {
        return 1 / (innerConvection + Bounds.emissivity(emissivity) * Radiation.coefficient(meanCelsius));
    }

    /** Outer surface resistance in wind, 1/(4 + 4v + ε·4σT³), m²K/W; the drive is a wind too. */
    public static double outerSurface(double windSpeed, double emissivity, double meanCelsius) {
        double convection = 4 + 4 * Bounds.notNegative("wind speed", windSpeed);
        return 1 / (convection + Bounds.emissivity(emissivity) * Radiation.coefficient(meanCelsius));
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
