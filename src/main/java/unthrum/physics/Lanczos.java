package unthrum.physics;

import java.util.Arrays;
import unthrum.physics.SymmetricMatrix.Eigenpair;

/** The lowest eigenpair of K x = λ M x by Lanczos's method on K⁻¹M (Parlett, from memory). */
final class Lanczos {

    private static final int STEPS = 10;
    private static final double EXHAUSTED = 1e-12;

    private Lanczos() {}

    /** @param stiffness positive definite; its factor replaces it */
    static Eigenpair lowest(BandMatrix stiffness, BandMatrix mass) {
        stiffness.factor();
        int size = stiffness.size();
        double[][] basis = new double[STEPS][];
        double[][] carried = new double[STEPS][];
        double[][] small = new double[STEPS][STEPS];
        double[] next = new double[size];
        Arrays.setAll(next, i -> 1 + Math.sin(i * 1.7));
        stiffness.solve(next = mass.times(next));
        int steps = 0;
        while (steps < STEPS) {
            double[] loaded = mass.times(next);
            double norm = Math.sqrt(SymmetricMatrix.dot(next, loaded));
            if (steps > 0 && norm < EXHAUSTED * small[0][0]) {
                break;
            }
            scale(next, 1 / norm);
            scale(loaded, 1 / norm);
            basis[steps] = next;
            carried[steps] = loaded;
            double[] image = loaded.clone();
            stiffness.solve(image);
            for (int j = 0; j <= steps; j++) {
                double part = SymmetricMatrix.dot(carried[j], image);
                small[j][steps] = part;
                small[steps][j] = part;
                subtract(image, basis[j], part);
            }
            for (int j = 0; j <= steps; j++) {
                subtract(image, basis[j], SymmetricMatrix.dot(carried[j], image));
            }
            next = image;
            steps++;
        }
        Eigenpair greatest = greatest(small, steps);
        double[] vector = new double[size];
        for (int j = 0; j < steps; j++) {
            subtract(vector, basis[j], -greatest.vector()[j]);
        }
        return new Eigenpair(1 / greatest.value(), vector);
    }

    private static void scale(double[] x, double factor) {
        for (int i = 0; i < x.length; i++) {
            x[i] *= factor;
        }
    }

    private static void subtract(double[] x, double[] y, double factor) {
        for (int i = 0; i < x.length; i++) {
            x[i] -= factor * y[i];
        }
    }

    /** By Jacobi's rotations. */
    private static Eigenpair greatest(double[][] a, int n) {
        double[][] v = new double[n][n];
        for (int i = 0; i < n; i++) {
            v[i][i] = 1;
        }
        for (int sweep = 0; sweep < 12; sweep++) {
            for (int p = 0; p < n; p++) {
                for (int q = p + 1; q < n; q++) {
                    if (a[p][q] != 0) {
                        rotate(a, v, n, p, q);
                    }
                }
            }
        }
        int best = 0;
        for (int i = 1; i < n; i++) {
            best = a[i][i] > a[best][best] ? i : best;
        }
        double[] vector = new double[n];
        for (int i = 0; i < n; i++) {
            vector[i] = v[i][best];
        }
        return new Eigenpair(a[best][best], vector);
    }

    private static void rotate(double[][] a, double[][] v, int n, int p, int q) {
        double theta = Math.atan2(2 * a[p][q], a[q][q] - a[p][p]) / 2;
        double c = Math.cos(theta);
        double s = Math.sin(theta);
        for (int k = 0; k < n; k++) {
            double kp = a[k][p];
            double kq = a[k][q];
            a[k][p] = c * kp - s * kq;
            a[k][q] = s * kp + c * kq;
            double vp = v[k][p];
            double vq = v[k][q];
            v[k][p] = c * vp - s * vq;
            v[k][q] = s * vp + c * vq;
        }
        for (int k = 0; k < n; k++) {
            double pk = a[p][k];
            double qk = a[q][k];
            a[p][k] = c * pk - s * qk;
            a[q][k] = s * pk + c * qk;
        }
    }
}
