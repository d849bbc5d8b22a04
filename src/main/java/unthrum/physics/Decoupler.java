package unthrum.physics;

/**
 * What holds two leaves apart, fibre or foam, as a spring for each square metre.
 *
 * @param depth      m
 * @param stiffness  dynamic stiffness per area s, N/m³
 * @param lossFactor of that spring
 * @param waveSpeed  at which sound crosses it, m/s
 * @param fibre      whether it is fibre, as in walls that were measured, and not foam
 */
public record Decoupler(double depth, double stiffness, double lossFactor, double waveSpeed, boolean fibre) {

    /**
     * Loss factor of fibre with the air that flows in it: the best fit to measured double leaves. Allard and Atalla,
     * tables 11.7 and 12.2, print 0.5 and 0.88 for fibrous layers and 0.18 for mineral wool without its air.
     */
    private static final double FIBRE_LOSS_FACTOR = 0.8;

    public Decoupler {
        Bounds.positive("depth of the decoupler", depth);
        Bounds.positive("stiffness of the decoupler", stiffness);
        Bounds.notNegative("loss factor of the decoupler", lossFactor);
        Bounds.positive("wave speed of the decoupler", waveSpeed);
    }

    /**
     * Fibre: the air in it follows isothermally, and the skeleton adds its own stiffness, s = (ρ₀c²/γ + E)/d
     * (EN 29052-1, which divides the air's part by the porosity too).
     *
     * @param skeletonModulus dynamic modulus E of the skeleton, Pa; nought for loose fibre
     */
    public static Decoupler fibre(double depth, double skeletonModulus) {
        return new Decoupler(depth, porous(skeletonModulus) / depth, FIBRE_LOSS_FACTOR, Air.AT_20_CELSIUS.soundSpeed(),
                true);
    }

    /**
     * Open-cell foam: as fibre, with the loss factor of its skeleton.
     *
     * @param density kg/m³
     */
    public static Decoupler openCell(double depth, double skeletonModulus, double density, double lossFactor) {
        return foam(depth, porous(skeletonModulus), density, lossFactor);
    }

    /**
     * Closed-cell foam: s = E/d, where the measured dynamic modulus E already holds the gas in the cells. It cannot
     * be softer than that gas.
     *
     * @param density kg/m³
     */
    public static Decoupler closedCell(double depth, double modulus, double density, double lossFactor) {
        double stiff = Math.max(Air.AT_20_CELSIUS.isothermalModulus(), Bounds.positive("modulus of the foam", modulus));
        return foam(depth, stiff, density, lossFactor);
    }

    private static Decoupler foam(double depth, double modulus, double density, double lossFactor) {
        double speed = Math.sqrt(modulus / Bounds.positive("density of the foam", density));
        return new Decoupler(depth, modulus / depth, lossFactor, speed, false);
    }

    private static double porous(double skeletonModulus) {
        return Air.AT_20_CELSIUS.isothermalModulus() + Bounds.notNegative("modulus of the skeleton", skeletonModulus);
    }

    /** Mass per area that moves in it, sd²/v², kg/m². */
    double mass() {
        return stiffness * depth * depth / (waveSpeed * waveSpeed);
    }

    /** Frequency v/2πd from which standing waves across it stop the gain, Hz. */
    public double limit() {
        return waveSpeed / (2 * Math.PI * depth);
    }
}
