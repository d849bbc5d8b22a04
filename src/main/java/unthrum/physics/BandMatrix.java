package unthrum.physics;

import java.util.Arrays;

/** A symmetric matrix whose entries lie in a band about its diagonal; only the lower half is kept. */
final class BandMatrix {

    private final int size;
    private final int band;
    /** Row i holds columns i − band to i, the diagonal last. */
    private final double[][] rows;

    /** @param band how far from the diagonal entries lie at most */
    BandMatrix(int size, int band) {
        this.size = size;
        this.band = band;
        this.rows = new double[size][band + 1];
    }

    int size() {
        return size;
    }

    /** Adds to the entry in the lower half, column ≤ row. */
    void add(int row, int column, double value) {
        rows[row][column - row + band] += value;
    }

    /** Empties a row and its column and puts this on the diagonal. */
    void fix(int index, double diagonal) {
        Arrays.fill(rows[index], 0);
        for (int i = index + 1; i < Math.min(size, index + band + 1); i++) {
            rows[i][index - i + band] = 0;
        }
        rows[index][band] = diagonal;
    }

    double[] times(double[] x) {
        double[] y = new double[size];
        for (int i = 0; i < size; i++) {
            double[] row = rows[i];
            int first = Math.max(0, i - band);
            double sum = row[band] * x[i];
            for (int j = first; j < i; j++) {
                double entry = row[j - i + band];
                sum += entry * x[j];
                y[j] += entry * x[i];
            }
            y[i] += sum;
        }
        return y;
    }

    /** Cholesky: L with A = L Lᵀ takes the place of A. */
    void factor() {
        for (int i = 0; i < size; i++) {
            double[] row = rows[i];
            int first = Math.max(0, i - band);
            for (int j = first; j <= i; j++) {
                double[] other = rows[j];
                int from = Math.max(first, j - band);
                double sum = row[j - i + band];
                int a = from - i + band;
                int b = from - j + band;
                for (int end = j - i + band; a < end; a++, b++) {
                    sum -= row[a] * other[b];
                }
                row[j - i + band] = j < i ? sum / other[band] : root(sum);
            }
        }
    }

    private static double root(double pivot) {
        if (!(pivot > 0)) {
            throw new ArithmeticException("matrix is not positive definite");
        }
        return Math.sqrt(pivot);
    }

    /** Solves A x = b in place, after {@link #factor}. */
    void solve(double[] x) {
        for (int i = 0; i < size; i++) {
            double[] row = rows[i];
            double sum = x[i];
            for (int j = Math.max(0, i - band); j < i; j++) {
                sum -= row[j - i + band] * x[j];
            }
            x[i] = sum / row[band];
        }
        for (int i = size - 1; i >= 0; i--) {
            double[] row = rows[i];
            x[i] /= row[band];
            for (int j = Math.max(0, i - band); j < i; j++) {
                x[j] -= row[j - i + band] * x[i];
            }
        }
    }
}
