package unthrum.physics;

/** Loss factor from how fast a struck panel dies away. */
public final class Decay {

    /** 6 ln 10/(2π) = 2.1988, rounded as in ISO 10848-1 and EN 15657: 0.05 % high. */
    private static final double ROUNDED = 2.2;

    private Decay() {}

    /** η = 2.2/(f T60); T60 is the time in which the level falls by 60 dB, s. */
    public static double lossFactor(double frequency, double reverberationTime) {
        return ROUNDED / (frequency * reverberationTime);
    }

    /** T60 = 2.2/(f η), s. */
    public static double reverberationTime(double frequency, double lossFactor) {
        return ROUNDED / (frequency * lossFactor);
    }

    /** Decay rate 20π lg e · f η = 27.29 f η, dB/s. */
    public static double rate(double frequency, double lossFactor) {
        return 20 * Math.PI * Math.log10(Math.E) * frequency * lossFactor;
    }

    /** Logarithmic decrement of one swing to the next, 2πζ/√(1 − ζ²) with ζ = η/2; πη for small damping. */
    public static double logarithmicDecrement(double lossFactor) {
        double zeta = lossFactor / 2;
        return 2 * Math.PI * zeta / Math.sqrt(1 - zeta * zeta);
    }

    /** Loss factor 2ζ from the logarithmic decrement δ: ζ = δ/√(4π² + δ²). */
    public static double lossFactorOfDecrement(double decrement) {
        return 2 * decrement / Math.hypot(2 * Math.PI, decrement);
    }

    /** Width of the resonance 3 dB below its peak, Hz: Δf = η f, for small damping. */
    public static double halfPowerBandwidth(double frequency, double lossFactor) {
        return frequency * lossFactor;
    }
}
