package unthrum.physics;

/**
 * What holds two leaves apart, fibre or foam, as a spring for each square metre.
 *
 * @param depth      m
 * @param modulus    dynamic modulus E of the skeleton, Pa; in closed cells that of foam and gas together
 * @param air        modulus of the air that yields beside the skeleton, Pa; nought in closed cells
 * @param lossFactor of the skeleton, in a deep fill that of skeleton and air
 * @param density    of the skeleton, kg/m³; nought in a deep fill, where waves run in the air alone
 * @param fill       whether it fills a deep gap loosely, as in walls that were measured
 */
public record Decoupler(double depth, double modulus, double air, double lossFactor, double density, boolean fill) {

    /** The shallowest fibre that was measured between two leaves, m. */
    public static final double MEASURED_DEPTH = 0.045;

    /**
     * Loss factor of a fill of fibre with the air that flows in it: the best fit to measured double leaves. Allard and
     * Atalla, tables 11.7 and 12.2, print 0.5 and 0.88 for fibrous layers and 0.18 for mineral wool without its air.
     */
    private static final double FILL_LOSS_FACTOR = 0.8;

    /** Loss factor of the fibres of felt, the middle of those 0.5 and 0.88. */
    private static final double FELT_LOSS_FACTOR = 0.7;

    public Decoupler {
        Bounds.positive("depth of the decoupler", depth);
        Bounds.positive("stiffness of the decoupler", modulus + air);
        Bounds.notNegative("loss factor of the decoupler", lossFactor);
        if (!fill) {
            Bounds.positive("modulus of the decoupler", modulus);
            Bounds.positive("density of the decoupler", density);
        }
    }

    /**
     * Fibre that fills a deep gap: the air in it follows isothermally, and the skeleton adds its own stiffness,
     * s = (ρ₀c²/γ + E)/d (EN 29052-1, which divides the air's part by the porosity too).
     *
     * @param modulus of the skeleton, Pa; nought for loose fibre
     */
    public static Decoupler fibre(double depth, double modulus) {
        return new Decoupler(depth, Bounds.notNegative("modulus of the skeleton", modulus), isothermal(),
                FILL_LOSS_FACTOR, 0, true);
    }

    /** Felt pressed between two leaves: as open-cell foam, with the loss factor of fibre. */
    public static Decoupler felt(double depth, double modulus, double density) {
        return openCell(depth, modulus, density, FELT_LOSS_FACTOR);
    }

    /** Open-cell foam: stiff as fibre, with the loss factor of its skeleton. */
    public static Decoupler openCell(double depth, double modulus, double density, double lossFactor) {
        return new Decoupler(depth, modulus, isothermal(), lossFactor, density, false);
    }

    /**
     * Closed-cell foam: s = E/d, where the measured dynamic modulus E already holds the gas in the cells. It cannot
     * be softer than that gas.
     */
    public static Decoupler closedCell(double depth, double modulus, double density, double lossFactor) {
        double stiff = Math.max(isothermal(), Bounds.positive("modulus of the foam", modulus));
        return new Decoupler(depth, stiff, 0, lossFactor, density, false);
    }

    /** The same with its skeleton so many times as stiff; the air stays as it is. */
    Decoupler stiffer(double times) {
        return air == 0 ? closedCell(depth, modulus * times, density, lossFactor)
                : new Decoupler(depth, modulus * times, air, lossFactor, density, fill);
    }

    private static double isothermal() {
        return Air.AT_20_CELSIUS.isothermalModulus();
    }

    /** Dynamic stiffness per area s, N/m³. */
    public double stiffness() {
        return (modulus + air) / depth;
    }

    /** Mass per area of the skeleton, kg/m². */
    double mass() {
        return density * depth;
    }

    /** Frequency v/2πd from which standing waves across it stop the gain, Hz. */
    public double limit() {
        double speed = fill ? Air.AT_20_CELSIUS.soundSpeed() : Math.sqrt(modulus / density);
        return speed / (2 * Math.PI * depth);
    }
}
