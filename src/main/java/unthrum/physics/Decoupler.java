package unthrum.physics;

/**
 * What holds two leaves apart: air, fibre or foam, as a spring for each square metre.
 *
 * @param depth      m
 * @param stiffness  dynamic stiffness per area s, N/m³
 * @param lossFactor of that spring
 */
public record Decoupler(double depth, double stiffness, double lossFactor) {
    /** Loss factor of an empty air gap, small (common practice, no source). */
    private static final double AIR_LOSS_FACTOR = 0.05;

    public Decoupler {
        Bounds.positive("depth of the decoupler", depth);
        Bounds.positive("stiffness of the decoupler", stiffness);
        Bounds.notNegative("loss factor of the decoupler", lossFactor);
    }

    /** An empty gap: s = ρ₀c²/d, adiabatic. */
    public static Decoupler air(double depth) {
        return new Decoupler(depth, Air.AT_20_CELSIUS.adiabaticModulus() / depth, AIR_LOSS_FACTOR);
    }

    /**
     * Fibre or open-cell foam: the air in it follows isothermally, and the skeleton adds its own stiffness,
     * s = (ρ₀c²/γ + E)/d.
     *
     * @param skeletonModulus dynamic modulus E of the skeleton, Pa; nought for loose fibre
     */
    public static Decoupler openCell(double depth, double skeletonModulus, double lossFactor) {
        Bounds.notNegative("modulus of the skeleton", skeletonModulus);
        return new Decoupler(depth, (Air.AT_20_CELSIUS.isothermalModulus() + skeletonModulus) / depth, lossFactor);
    }

    /**
     * Closed-cell foam: s = E/d, where the measured dynamic modulus E already holds the gas in the cells. It cannot
     * be softer than that gas.
     */
    public static Decoupler closedCell(double depth, double modulus, double lossFactor) {
        double gas = Air.AT_20_CELSIUS.isothermalModulus();
        return new Decoupler(depth, Math.max(gas, Bounds.positive("modulus of the foam", modulus)) / depth, lossFactor);
    }
}
