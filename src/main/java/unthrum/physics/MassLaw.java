package unthrum.physics;

/**
 * How much sound passes a limp, airtight leaf of surface mass m: nothing but its inertia holds the sound back.
 *
 * <p>Valid for frequencies well above the first resonance of the bay and well below coincidence
 * ({@link Leaf} adds coincidence and says how far measurements lie off). Source: Bies, Hansen and Howard, Engineering
 * Noise Control; Fahy and Gardonio, Sound and Structural Vibration.
 */
public final class MassLaw {

    /**
     * cos² of the steepest angle of field incidence, 80.1° from the normal: far above a = 1 such a field passes 5.5 dB
     * more than normal incidence, as Bies, Hansen and Howard take for third octaves (other texts 4 to 5.5, most with
     * the limit at 78°).
     */
    private static final double STEEPEST = 0.0295;

    /** Below this the logarithms cancel, and everything passes anyhow. */
    private static final double SMALL = 1e-6;

    private MassLaw() {
    }

    /** Normal incidence: TL = 10 lg[1 + (πfm/ρ₀c)²], dB. */
    public static double normal(double surfaceMass, double frequency, Air air) {
        return oblique(surfaceMass, frequency, 0, air);
    }

    /** Plane wave at an angle from the normal, rad: TL = 10 lg[1 + (πfm·cosθ/ρ₀c)²], dB. */
    public static double oblique(double surfaceMass, double frequency, double angle, Air air) {
        double cosine = Math.cos(angle);
        return 10 * Math.log10(1 + inertia(surfaceMass, frequency, air) * cosine * cosine);
    }

    /** Field incidence, sound from most directions, dB: −10 lg of what passes. */
    public static double field(double surfaceMass, double frequency, Air air) {
        return CompositeLoss.loss(passed(surfaceMass, frequency, air));
    }

    /**
     * Share of the power that passes under field incidence: the mean of 1/(1 + a²cos²θ) over the angles up to
     * {@link #STEEPEST}, ln[(1 + a²)/(1 + u a²)] / [a²(1 − u)] with a = πfm/ρ₀c. Never above one.
     */
    static double passed(double surfaceMass, double frequency, Air air) {
        double square = inertia(surfaceMass, frequency, air);
        return square < SMALL ? 1
                : Math.log((1 + square) / (1 + STEEPEST * square)) / (square * (1 - STEEPEST));
    }

    /** a² = (πfm/ρ₀c)². */
    private static double inertia(double surfaceMass, double frequency, Air air) {
        Bounds.notNegative("surface mass", surfaceMass);
        Bounds.positive("frequency", frequency);
        double ratio = Math.PI * frequency * surfaceMass / air.impedance();
        return ratio * ratio;
    }
}
