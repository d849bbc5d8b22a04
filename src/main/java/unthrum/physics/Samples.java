package unthrum.physics;

import java.util.function.DoubleUnaryOperator;

/** Where a third octave is looked at, as multiples of its centre: five frequencies, evenly on the scale of pitch. */
final class Samples {

    private static final double[] OF_A_BAND = {at(-0.4), at(-0.2), 1, at(0.2), at(0.4)};

    private Samples() {
    }

    /** Mean over a band of what depends on frequency. */
    static double mean(ThirdOctave band, DoubleUnaryOperator figure) {
        double sum = 0;
        for (double sample : OF_A_BAND) {
            sum += figure.applyAsDouble(band.centre() * sample);
        }
        return sum / OF_A_BAND.length;
    }

    private static double at(double position) {
        return Math.pow(10, position / 10);
    }
}
