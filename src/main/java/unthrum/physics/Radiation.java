package unthrum.physics;

/**
 * Heat exchanged by radiation between two large parallel grey faces, a roof and the lining under it.
 * Çengel, Heat Transfer, chapter on radiation. Temperatures in °C.
 */
public final class Radiation {
    /** Stefan–Boltzmann constant, W/(m²·K⁴), CODATA 2018. */
    public static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    /** 0 °C in kelvin. */
    static final double ZERO_CELSIUS = 273.15;

    private Radiation() {
    }

    /** Exchange factor of two facing faces, 1/(1/ε₁ + 1/ε₂ − 1). */
    public static double exchangeFactor(double emissivity1, double emissivity2) {
        return 1 / (1 / Bounds.emissivity(emissivity1) + 1 / Bounds.emissivity(emissivity2) - 1);
    }

    /** Radiative coefficient of a black face, 4σT³, W/(m²·K), at the mean temperature of the gap (ISO 6946). */
    public static double coefficient(double meanCelsius) {
        double kelvin = Bounds.celsius("mean temperature", meanCelsius) + ZERO_CELSIUS;
        return 4 * STEFAN_BOLTZMANN * kelvin * kelvin * kelvin;
    }
}
