package unthrum.physics;

/** The three ways in which two quadratic forms settle with each other. */
final class SmallEigen {

    private static final int SIZE = 3;
    private static final int SWEEPS = 8;
    /** A motion that the others nearly make up is left out. */
    private static final double SINGULAR = 1e-9;

    private SmallEigen() {}

    /**
     * A v = λ B v of symmetric 3 × 3 matrices, lower triangles given; B positive. The matrices are used up.
     *
     * @return λⱼ, and the squared part of the first unit vector in each way, (B₀₀ in sum)
     */
    static double[][] solve(double[][] a, double[][] b) {
        factor(b);
        double[][] m = reduced(a, b);
        double[] first = {1, 0, 0};
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            rotate(m, first, 0, 1);
            rotate(m, first, 0, 2);
            rotate(m, first, 1, 2);
        }
        double[][] roots = new double[2][SIZE];
        for (int j = 0; j < SIZE; j++) {
            roots[0][j] = m[j][j];
            roots[1][j] = b[0][0] * b[0][0] * first[j] * first[j];
        }
        return roots;
    }

    /** B = L Lᵀ in place. */
    private static void factor(double[][] b) {
        for (int i = 0; i < SIZE; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = b[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= b[i][k] * b[j][k];
                }
                b[i][j] = i > j ? sum / b[j][j] : Math.sqrt(Math.max(sum, SINGULAR * b[i][i]));
            }
        }
    }

    /** L⁻¹ A L⁻ᵀ. */
    private static double[][] reduced(double[][] a, double[][] l) {
        double[][] m = new double[SIZE][SIZE];
        for (int i = 0; i < SIZE; i++) {
            for (int j = 0; j < SIZE; j++) {
                m[i][j] = i >= j ? a[i][j] : a[j][i];
            }
        }
        for (int j = 0; j < SIZE; j++) {
            for (int i = 0; i < SIZE; i++) {
                for (int k = 0; k < i; k++) {
                    m[i][j] -= l[i][k] * m[k][j];
                }
                m[i][j] /= l[i][i];
            }
        }
        for (int i = 0; i < SIZE; i++) {
            for (int j = 0; j < SIZE; j++) {
                for (int k = 0; k < j; k++) {
                    m[i][j] -= l[j][k] * m[i][k];
                }
                m[i][j] /= l[j][j];
            }
        }
        return m;
    }

    /** One rotation of Jacobi's, which makes m[p][q] nought; the first unit vector turns along. */
    private static void rotate(double[][] m, double[] first, int p, int q) {
        if (m[p][q] == 0) {
            return;
        }
        double theta = (m[q][q] - m[p][p]) / (2 * m[p][q]);
        double t = Math.copySign(1, theta) / (Math.abs(theta) + Math.hypot(theta, 1));
        double c = 1 / Math.hypot(t, 1);
        double s = t * c;
        for (int k = 0; k < SIZE; k++) {
            double kp = m[k][p];
            m[k][p] = c * kp - s * m[k][q];
            m[k][q] = s * kp + c * m[k][q];
        }
        for (int k = 0; k < SIZE; k++) {
            double pk = m[p][k];
            m[p][k] = c * pk - s * m[q][k];
            m[q][k] = s * pk + c * m[q][k];
        }
        double before = first[p];
        first[p] = c * before - s * first[q];
        first[q] = s * before + c * first[q];
    }
}
