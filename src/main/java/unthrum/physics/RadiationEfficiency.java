package unthrum.physics;

/**
 * How well a plate of sides a ≥ b in a rigid wall turns its motion into sound, over that of a piston as large, mean
 * over the modes near a frequency. EN 12354-1:2000, Annex B (after Maidanik 1962 and Leppington et al. 1982), from
 * memory; edges hinged. Clamped edges radiate up to twice that below coincidence.
 */
public final class RadiationEfficiency {

    private static final double MOST = 2;
    private static final Air AIR = Air.AT_20_CELSIUS;

    private RadiationEfficiency() {}

    /** What a bay loses to the air on both its faces at a frequency (Hz): η = 2 ρc σ/(2πf m''). */
    public static double lossFactor(Skin skin, Bay bay, double frequency) {
        double sigma = of(frequency, critical(skin), bay.length(), bay.width());
        return 2 * AIR.impedance() * sigma / (2 * Math.PI * frequency * skin.surfaceDensity());
    }

    /** f_c = c²/2π √(m''/D), Hz, at which the skin's waves are as fast as sound. */
    static double critical(Skin skin) {
        return AIR.soundSpeed() * AIR.soundSpeed() / (2 * Math.PI)
                * Math.sqrt(skin.surfaceDensity() / skin.flexuralRigidity());
    }

    /** @param critical f_c of the skin, Hz */
    static double of(double frequency, double critical, double a, double b) {
        double soundSpeed = AIR.soundSpeed();
        double whole = 4 * a * b * Math.pow(frequency / soundSpeed, 2);
        double first = soundSpeed * soundSpeed / (4 * critical) * (1 / (a * a) + 1 / (b * b));
        if (first > critical / 2) {
            double edge = Math.sqrt(2 * Math.PI * frequency * (a + b) / (16 * soundSpeed));
            double other = frequency < critical ? whole : above(frequency, critical);
            return Math.min(MOST, Math.min(edge, other));
        }
        double sigma = frequency >= critical ? above(frequency, critical) : below(frequency, critical, a, b);
        return Math.min(MOST, frequency < critical ? Math.min(whole, sigma) : sigma);
    }

    private static double above(double frequency, double critical) {
        return frequency <= critical ? MOST : 1 / Math.sqrt(1 - critical / frequency);
    }

    /** Edges and corners, which radiate while the plate's waves are slower than sound. */
    private static double below(double frequency, double critical, double a, double b) {
        double soundSpeed = AIR.soundSpeed();
        double square = frequency / critical;
        double ratio = Math.sqrt(square);
        double rest = 1 - square;
        double edges = (rest * Math.log((1 + ratio) / (1 - ratio)) + 2 * ratio)
                / (4 * Math.PI * Math.PI * Math.pow(rest, 1.5));
        double corners = square > 0.5 ? 0 : 8 * soundSpeed * soundSpeed * (1 - 2 * square)
                / (critical * critical * Math.pow(Math.PI, 4) * a * b * ratio * Math.sqrt(rest));
        return 2 * (a + b) / (a * b) * soundSpeed / critical * edges + corners;
    }
}
