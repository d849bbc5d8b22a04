package unthrum.physics;

import java.util.Arrays;

/** The little linear algebra that the Ritz solution needs, on symmetric positive definite matrices. */
final class SymmetricMatrix {

    private static final int MOST_ITERATIONS = 60;
    private static final double ACCURACY = 1e-7;

    private SymmetricMatrix() {}

    /** An eigenvalue with its vector of unit length. */
    record Eigenpair(double value, double[] vector) {}

    /** Cholesky: the lower triangle L with A = L Lᵀ, in the place of A's lower triangle. */
    static void factor(double[][] a) {
        for (int i = 0; i < a.length; i++) {
            double[] row = a[i];
            for (int j = 0; j <= i; j++) {
                double[] other = a[j];
                double sum = row[j];
                for (int k = 0; k < j; k++) {
                    sum -= row[k] * other[k];
                }
                row[j] = i == j ? root(sum) : sum / other[j];
            }
        }
    }

    private static double root(double pivot) {
        if (!(pivot > 0)) {
            throw new ArithmeticException("matrix is not positive definite");
        }
        return Math.sqrt(pivot);
    }

    /** Solves L y = x in place. */
    static void forward(double[][] factor, double[] x) {
        for (int i = 0; i < x.length; i++) {
            double[] row = factor[i];
            double sum = x[i];
            for (int k = 0; k < i; k++) {
                sum -= row[k] * x[k];
            }
            x[i] = sum / row[i];
        }
    }

    /** Solves Lᵀ y = x in place. */
    static void backward(double[][] factor, double[] x) {
        for (int i = x.length - 1; i >= 0; i--) {
            double[] row = factor[i];
            x[i] /= row[i];
            for (int k = 0; k < i; k++) {
                x[k] -= row[k] * x[i];
            }
        }
    }

    /**
     * The lowest eigenvalue by inverse iteration; the Cholesky factor replaces A. Where two lie close the vector may
     * mix theirs, while the value still settles.
     */
    static Eigenpair lowest(double[][] a) {
        factor(a);
        double[] x = new double[a.length];
        Arrays.setAll(x, i -> 1 / (1.0 + i));
        double value = 0;
        for (int i = 0; i < MOST_ITERATIONS; i++) {
            normalise(x);
            double[] y = x.clone();
            forward(a, y);
            double next = 1 / dot(y, y);
            backward(a, y);
            x = y;
            boolean settled = Math.abs(next - value) <= ACCURACY * next;
            value = next;
            if (settled) {
                break;
            }
        }
        normalise(x);
        return new Eigenpair(value, x);
    }

    static double dot(double[] x, double[] y) {
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            sum += x[i] * y[i];
        }
        return sum;
    }

    private static void normalise(double[] x) {
        double length = Math.sqrt(dot(x, x));
        Arrays.setAll(x, i -> x[i] / length);
    }
}
