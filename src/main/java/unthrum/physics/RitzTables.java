package unthrum.physics;

/**
 * Integrals over a unit length of the functions that {@link FixedShell} builds its motion from: beam shapes φ for the
 * deflection, hinged or clamped, and sines s = √2 sin iπξ for the motion in the skin's plane.
 *
 * <p>Both solve f'''' = c⁴f, so that integrating by parts leaves only values at the ends: with k = iπ
 * (β⁴ − k⁴)∫sφ = −[s'φ''], (β⁴ − k⁴)∫s'φ = [s'φ'''], (βm⁴ − βp⁴)∫φm'φp' = [φm''φp''' − φm'''φp''], and at the near end
 * of a clamped beam φ'' = 2β², φ''' = −2αβ³. Derived here.
 */
final class RitzTables {

    /** Highest beam shape and highest sine held in the tables. */
    static final int MOST = 24;

    static final RitzTables HINGED = new RitzTables(false);
    static final RitzTables CLAMPED = new RitzTables(true);

    /** ∫φm'φp', index 1 for the first. */
    final double[][] slopeSlope = new double[MOST + 1][MOST + 1];
    /** ∫s φ and ∫s'φ, sine first. */
    final double[][] sineShape = new double[MOST + 1][MOST + 1];
    final double[][] cosineShape = new double[MOST + 1][MOST + 1];
    /** Wave numbers β of the beam shapes. */
    final double[] beta = new double[MOST + 1];

    private RitzTables(boolean clamped) {
        for (int m = 1; m <= MOST; m++) {
            BeamMode mode = clamped ? BeamMode.clamped(m) : BeamMode.hinged(m);
            beta[m] = mode.beta();
            slopeSlope[m][m] = mode.slope();
        }
        for (int i = 1; i <= MOST; i++) {
            for (int m = 1; m <= MOST; m++) {
                if (clamped) {
                    fillClamped(i, m);
                } else {
                    sineShape[i][m] = i == m ? 1 : 0;
                    cosineShape[i][m] = cosineSine(i, m);
                }
            }
        }
    }

    private void fillClamped(int i, int m) {
        double wave = i * Math.PI;
        double difference = Math.pow(beta[m], 4) - Math.pow(wave, 4);
        double slope = Math.sqrt(2) * wave;
        if ((i + m) % 2 == 1) {
            cosineShape[i][m] = 2 * slope * shear(m) / difference;
            return;
        }
        sineShape[i][m] = 2 * slope * bend(m) / difference;
        if (i != m) {
            slopeSlope[i][m] = 2 * (bend(i) * shear(m) - shear(i) * bend(m))
                    / (Math.pow(beta[i], 4) - Math.pow(beta[m], 4));
        }
    }

    /** φ'' of a clamped beam at its near end. */
    private double bend(int m) {
        return 2 * beta[m] * beta[m];
    }

    /** −φ''' of a clamped beam at its near end. */
    private double shear(int m) {
        return 2 * BeamMode.alpha(beta[m]) * Math.pow(beta[m], 3);
    }

    /** ∫si' sj = 4ij/(j² − i²) where i + j is odd, else 0. */
    static double cosineSine(int i, int j) {
        return (i + j) % 2 == 0 ? 0 : 4.0 * i * j / (j * j - i * i);
    }
}
