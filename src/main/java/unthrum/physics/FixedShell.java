package unthrum.physics;

import java.util.Arrays;
import unthrum.physics.SymmetricMatrix.Eigenpair;

/**
 * Lowest frequency of a shallow shell whose edges cannot move in the skin's plane: a Rayleigh–Ritz solution.
 *
 * <p>Deflection w in beam shapes, in-plane motion u, v in sines, all zero at the edges. Strains εx = u' + w/Rx,
 * εy = v' + w/Ry, γ = u' + v'; in-plane inertia is left out, so u and v are eliminated. An evenly curved rectangle is
 * symmetric about both middle lines, which splits the problem into four small ones. Sources: Leissa, Vibration of
 * Shells, NASA SP-288; Donnell–Mushtari–Vlasov shallow-shell theory; from memory.
 */
final class FixedShell {

    /** Beam shapes of one symmetry each way: ten of both in all, more where the mode is finer. */
    private static final int LEAST_SHAPES = 5;

    private static final int MOST_SHAPES = 10;

    private final Skin skin;
    private final Bay bay;
    private final boolean clamped;
    private final RitzTables tables;
    private final double membrane;
    private final double shear;
    private final int[] shapesX;
    private final int[] shapesY;
    private final int[] evenX;
    private final int[] evenY;
    private final int[] oddX;
    private final int[] oddY;

    private FixedShell(Skin skin, Bay bay, boolean clamped, int firstX, int firstY, int countX, int countY) {
        this.skin = skin;
        this.bay = bay;
        this.clamped = clamped;
        this.tables = clamped ? RitzTables.CLAMPED : RitzTables.HINGED;
        this.membrane = skin.membraneStiffness() / (1 - skin.poissonRatio() * skin.poissonRatio());
        this.shear = (1 - skin.poissonRatio()) / 2;
        this.shapesX = everySecond(firstX, countX);
        this.shapesY = everySecond(firstY, countY);
        this.evenX = everySecond(firstX, countX + 1);
        this.evenY = everySecond(firstY, countY + 1);
        this.oddX = everySecond(3 - firstX, countX + 1);
        this.oddY = everySecond(3 - firstY, countY + 1);
    }

    /** A mode with its shape. */
    record Solution(Mode mode, ModeShape shape) {}

    /** All that a solution hangs on. */
    private record Question(Skin skin, Bay bay, boolean clamped, int countX, int countY) {}

    private static final int MOST_KEPT = 2_000;
    private static final Kept<Question, Solution> KEPT = new Kept<>(MOST_KEPT, FixedShell::solved);

    /** The lowest mode of all four symmetries, given the mode on sliding edges to tell how fine a shape to expect. */
    static Solution solve(Skin skin, Bay bay, boolean clamped, Mode sliding) {
        return KEPT.of(new Question(skin, bay, clamped, shapes(sliding.lengthHalfWaves()),
                shapes(sliding.widthHalfWaves())));
    }

    private static Solution solved(Question q) {
        Solution lowest = null;
        for (int firstX = 1; firstX <= 2; firstX++) {
            for (int firstY = 1; firstY <= 2; firstY++) {
                Solution next = new FixedShell(q.skin, q.bay, q.clamped, firstX, firstY, q.countX,
                        q.countY).solve();
                if (lowest == null || next.mode().frequency() < lowest.mode().frequency()) {
                    lowest = next;
                }
            }
        }
        return lowest;
    }

    private static int shapes(int halfWaves) {
        return Math.max(LEAST_SHAPES, Math.min(MOST_SHAPES, halfWaves / 2 + 4));
    }

    private static int[] everySecond(int first, int count) {
        int[] indices = new int[count];
        for (int i = 0; i < count; i++) {
            indices[i] = first + 2 * i;
        }
        return indices;
    }

    private Solution solve() {
        double[][] bending = bending();
        double[][] stiffness = bay.isFlat() ? copy(bending) : withStretching(bending);
        Eigenpair pair = SymmetricMatrix.lowest(stiffness);
        double[] vector = pair.vector();
        double bent = 0;
        for (int i = 0; i < bending.length; i++) {
            bent += vector[i] * SymmetricMatrix.dot(bending[i], vector);
        }
        double frequency = Math.sqrt(pair.value() / skin.surfaceDensity()) / (2 * Math.PI);
        ModeShape shape = new ModeShape(clamped, shapesX, shapesY, vector);
        int[] halfWaves = shape.strongest();
        return new Solution(
                new Mode(frequency, Math.min(1, bent / pair.value()), halfWaves[0], halfWaves[1]), shape);
    }

    private static double[][] copy(double[][] matrix) {
        return Arrays.stream(matrix).map(double[]::clone).toArray(double[][]::new);
    }

    /** D ∫(∇²w)² per area for each pair of shapes. */
    private double[][] bending() {
        double a = bay.length();
        double b = bay.width();
        int size = shapesX.length * shapesY.length;
        double[][] k = new double[size][size];
        double twist = 2 * skin.flexuralRigidity() / (a * a * b * b);
        for (int r = 0; r < size; r++) {
            int m = shapesX[r / shapesY.length];
            int n = shapesY[r % shapesY.length];
            for (int c = 0; c < size; c++) {
                int p = shapesX[c / shapesY.length];
                int q = shapesY[c % shapesY.length];
                k[r][c] = twist * tables.slopeSlope[m][p] * tables.slopeSlope[n][q];
            }
            k[r][r] += skin.flexuralRigidity()
                    * (Math.pow(tables.beta[m] / a, 4) + Math.pow(tables.beta[n] / b, 4));
        }
        return k;
    }

    /** Bending plus what stretching adds once u and v have settled: Kww − Kwi Kii⁻¹ Kiw. */
    private double[][] withStretching(double[][] bending) {
        double kx = bay.lengthCurvature();
        double ky = bay.widthCurvature();
        double nu = skin.poissonRatio();
        int size = bending.length;
        double[][] coupling = coupling();
        double[][] inPlane = inPlane();
        SymmetricMatrix.factor(inPlane);
        for (double[] column : coupling) {
            SymmetricMatrix.forward(inPlane, column);
        }
        double[][] k = new double[size][size];
        double uniform = kx * kx + ky * ky + 2 * nu * kx * ky;
        for (int r = 0; r < size; r++) {
            for (int c = 0; c <= r; c++) {
                double stretch = (r == c ? uniform : 0) - SymmetricMatrix.dot(coupling[r], coupling[c]);
                k[r][c] = bending[r][c] + membrane * stretch;
                k[c][r] = k[r][c];
            }
        }
        return k;
    }

    /** Kii / C: rows u (odd in x, even in y) then v (even in x, odd in y), lower triangle. */
    private double[][] inPlane() {
        int us = oddX.length * evenY.length;
        int vs = evenX.length * oddY.length;
        double[][] k = new double[us + vs][us + vs];
        for (int r = 0; r < us; r++) {
            double x = Math.PI * oddX[r / evenY.length] / bay.length();
            double y = Math.PI * evenY[r % evenY.length] / bay.width();
            k[r][r] = x * x + shear * y * y;
        }
        double both = -(skin.poissonRatio() + shear) / bay.area();
        for (int r = 0; r < vs; r++) {
            int p = evenX[r / oddY.length];
            int q = oddY[r % oddY.length];
            double x = Math.PI * p / bay.length();
            double y = Math.PI * q / bay.width();
            k[us + r][us + r] = y * y + shear * x * x;
            for (int c = 0; c < us; c++) {
                int i = oddX[c / evenY.length];
                int j = evenY[c % evenY.length];
                k[us + r][c] = both * RitzTables.cosineSine(i, p) * RitzTables.cosineSine(j, q);
            }
        }
        return k;
    }

    /** Kiw / C, one row for each shape of the deflection. */
    private double[][] coupling() {
        double nu = skin.poissonRatio();
        double x = (bay.lengthCurvature() + nu * bay.widthCurvature()) / bay.length();
        double y = (bay.widthCurvature() + nu * bay.lengthCurvature()) / bay.width();
        int us = oddX.length * evenY.length;
        int vs = evenX.length * oddY.length;
        int size = shapesX.length * shapesY.length;
        double[][] k = new double[size][us + vs];
        for (int w = 0; w < size; w++) {
            int m = shapesX[w / shapesY.length];
            int n = shapesY[w % shapesY.length];
            for (int c = 0; c < us; c++) {
                k[w][c] = x * tables.cosineShape[oddX[c / evenY.length]][m]
                        * tables.sineShape[evenY[c % evenY.length]][n];
            }
            for (int c = 0; c < vs; c++) {
                k[w][us + c] = y * tables.sineShape[evenX[c / oddY.length]][m]
                        * tables.cosineShape[oddY[c % oddY.length]][n];
            }
        }
        return k;
    }
}
