package unthrum.physics;

/**
 * Transmission loss of a limp, airtight leaf of surface mass m: nothing but its inertia holds the sound back.
 *
 * <p>Valid for frequencies well above the first resonance of the bay and well below coincidence
 * ({@link Leaf} adds coincidence). Handbook measurements on bare steel lie up to 6 dB from that leaf, mostly
 * below (33 octave values: mean 1.6 dB, root mean square 3.1 dB).
 * Source: Bies, Hansen and Howard, Engineering Noise Control; Norton and Karczub, Fundamentals of Noise and
 * Vibration Analysis.
 */
public final class MassLaw {
    /** What field incidence costs against normal incidence, dB (Norton and Karczub; other texts 4.0 to 5.5). */
    public static final double FIELD_INCIDENCE_COST = 5;

    private MassLaw() {
    }

    /** Normal incidence: TL = 10 lg[1 + (πfm/ρ₀c)²], dB. */
    public static double normal(double surfaceMass, double frequency, Air air) {
        return oblique(surfaceMass, frequency, 0, air);
    }

    /** Plane wave at an angle from the normal, rad: TL = 10 lg[1 + (πfm·cosθ/ρ₀c)²], dB. */
    public static double oblique(double surfaceMass, double frequency, double angle, Air air) {
        Bounds.notNegative("surface mass", surfaceMass);
        Bounds.positive("frequency", frequency);
        double ratio = Math.PI * frequency * surfaceMass * Math.cos(angle) / air.impedance();
        return 10 * Math.log10(1 + ratio * ratio);
    }

    /** Field incidence, sound from most directions: the normal law less 5 dB, and never below nought. */
    public static double field(double surfaceMass, double frequency, Air air) {
        return Math.max(0, normal(surfaceMass, frequency, air) - FIELD_INCIDENCE_COST);
    }
}
