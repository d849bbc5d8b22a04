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
}
