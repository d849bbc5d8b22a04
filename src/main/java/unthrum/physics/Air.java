package unthrum.physics;

/**
 * Air as a carrier of sound.
 *
 * @param density    kg/m³
 * @param soundSpeed m/s
 */
public record Air(double density, double soundSpeed) {
    /** Dry air at 20 °C and 101.325 kPa: 1.21 kg/m³, 343 m/s (the pair used by most texts on building acoustics). */
    public static final Air AT_20_CELSIUS = new Air(1.21, 343);

    /** Ratio of the specific heats of air; 1.4 for a diatomic gas. */
    static final double HEAT_CAPACITY_RATIO = 1.4;

    public Air {
        Bounds.positive("air density", density);
        Bounds.positive("speed of sound", soundSpeed);
    }

    /** Characteristic impedance ρ₀c, Pa·s/m. */
    public double impedance() {
        return density * soundSpeed;
    }

    /** Adiabatic bulk modulus ρ₀c², Pa: free air in a shallow gap. */
    public double adiabaticModulus() {
        return density * soundSpeed * soundSpeed;
    }

    /** Isothermal bulk modulus ρ₀c²/γ, Pa: air in the pores of fibre or open-cell foam. */
    public double isothermalModulus() {
        return adiabaticModulus() / HEAT_CAPACITY_RATIO;
    }
}
