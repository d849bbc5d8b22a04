package unthrum.physics;

import java.util.function.DoubleUnaryOperator;

/**
 * Integrals over a unit length of the functions that {@link FixedShell} builds its motion from: beam shapes φ for the
 * deflection, hinged or clamped, and sines s = √2 sin iπξ for the motion in the skin's plane.
 */
final class RitzTables {

    static final RitzTables HINGED = new RitzTables(false);
    static final RitzTables CLAMPED = new RitzTables(true);

    /** Highest beam shape and highest sine held in the tables. */
    static final int MOST = 24;

    private static final int POINTS = 480;

    /** ∫φm'φp', index 1 for the first. */
    final double[][] slopeSlope = new double[MOST + 1][MOST + 1];
    /** ∫s φ and ∫s'φ, sine first. */
    final double[][] sineShape = new double[MOST + 1][MOST + 1];
    final double[][] cosineShape = new double[MOST + 1][MOST + 1];
    /** Wave numbers β of the beam shapes. */
    final double[] beta = new double[MOST + 1];

    private RitzTables(boolean clamped) {
        double[][] shape = new double[MOST + 1][];
        double[][] slope = new double[MOST + 1][];
        double[][] sine = new double[MOST + 1][];
        double[][] cosine = new double[MOST + 1][];
        for (int i = 1; i <= MOST; i++) {
            BeamShape beam = clamped ? BeamShape.clamped(i) : BeamShape.hinged(i);
            double wave = i * Math.PI;
            beta[i] = (clamped ? BeamMode.clamped(i) : BeamMode.hinged(i)).beta();
            shape[i] = samples(x -> beam.at(x, 0));
            slope[i] = samples(x -> beam.at(x, 1));
            sine[i] = samples(x -> Math.sqrt(2) * Math.sin(wave * (x + 0.5)));
            cosine[i] = samples(x -> Math.sqrt(2) * wave * Math.cos(wave * (x + 0.5)));
        }
        for (int i = 1; i <= MOST; i++) {
            for (int j = 1; j <= MOST; j++) {
                slopeSlope[i][j] = product(slope[i], slope[j]);
                sineShape[i][j] = product(sine[i], shape[j]);
                cosineShape[i][j] = product(cosine[i], shape[j]);
            }
        }
    }

    /** ∫si' sj = 4ij/(i² − j²) where i + j is odd, else 0. */
    static double cosineSine(int i, int j) {
        return (i + j) % 2 == 0 ? 0 : 4.0 * i * j / (i * i - j * j);
    }

    private static double[] samples(DoubleUnaryOperator f) {
        double[] samples = new double[POINTS + 1];
        for (int k = 0; k <= POINTS; k++) {
            samples[k] = f.applyAsDouble((double) k / POINTS - 0.5);
        }
        return samples;
    }

    private static double product(double[] f, double[] g) {
        double sum = f[0] * g[0] + f[POINTS] * g[POINTS];
        for (int k = 1; k < POINTS; k++) {
            sum += (k % 2 == 1 ? 4 : 2) * f[k] * g[k];
        }
        return sum / (3 * POINTS);
    }
}
