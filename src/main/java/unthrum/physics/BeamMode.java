package unthrum.physics;

import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * One mode of a uniform beam of unit length, from which plate modes are built.
 *
 * @param beta wave number times length
 * @param slope H = ∫φ'² dξ for ∫φ² dξ = 1; the integral of φ''² with the work of end springs is β⁴
 */
record BeamMode(double beta, double slope) {

    private static final int TABLED = 40;
    private static final BeamMode[] CLAMPED = table(BeamMode::findClamped);
    private static final BeamMode[] HINGED_CLAMPED = table(BeamMode::findHingedClamped);

    private static BeamMode[] table(IntFunction<BeamMode> mode) {
        return IntStream.rangeClosed(1, TABLED).mapToObj(mode).toArray(BeamMode[]::new);
    }

    /** Hinged at both ends: φ = √2 sin mπξ. */
    static BeamMode hinged(int m) {
        double beta = m * Math.PI;
        return new BeamMode(beta, beta * beta);
    }

    /**
     * Clamped at both ends: cos β cosh β = 1, H = αβ(αβ − 2), α = (cosh β − cos β)/(sinh β − sin β).
     * Source: Blevins, Formulas for Natural Frequency and Mode Shape, table 8-1 and appendix; from memory.
     */
    static BeamMode clamped(int m) {
        return m <= TABLED ? CLAMPED[m - 1] : findClamped(m);
    }

    /** Clamped at one end, hinged at the other: tan β = tanh β, H = αβ(αβ − 1). Source as {@link #clamped}. */
    static BeamMode hingedClamped(int m) {
        return m <= TABLED ? HINGED_CLAMPED[m - 1] : findHingedClamped(m);
    }

    private static BeamMode findClamped(int m) {
        double asymptote = (m + 0.5) * Math.PI;
        double beta = asymptote;
        double sign = m % 2 == 1 ? 1 : -1;
        for (int i = 0; i < 4; i++) {
            beta = asymptote + sign * Math.asin(1 / Math.cosh(beta));
        }
        double ab = alpha(beta) * beta;
        return new BeamMode(beta, ab * (ab - 2));
    }

    private static BeamMode findHingedClamped(int m) {
        double beta = (m + 0.25) * Math.PI;
        for (int i = 0; i < 4; i++) {
            beta = m * Math.PI + Math.atan(Math.tanh(beta));
        }
        double ab = alpha(beta) * beta;
        return new BeamMode(beta, ab * (ab - 1));
    }

    /** (cosh β − cos β)/(sinh β − sin β), of clamped beams: near one. */
    static double alpha(double beta) {
        if (beta > 30) {
            return 1;
        }
        return (Math.cosh(beta) - Math.cos(beta)) / (Math.sinh(beta) - Math.sin(beta));
    }
}
