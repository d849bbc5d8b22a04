package unthrum.physics;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntFunction;

/**
 * How much of the first mode's bending energy lies under a patch in the middle of a bay: all that a damping patch can
 * reach.
 *
 * <p>The energy density w_xx² + w_yy² + 2ν w_xx w_yy + 2(1 − ν) w_xy² of the mode is summed over a quarter of the bay;
 * a patch's share is its part of the sum. Within 0.005 of finite elements for flat bays, hinged or clamped. On a curved
 * bay with clamped, sliding edges the mode is a single product of beam shapes, up to 0.06 off. The patch is thin: it
 * leaves the mode's shape as it was. Source: modal strain energy (Ungar and Kerwin 1962), from memory.
 */
public final class Coverage {

    private static final int CELLS = 48;
    private static final double STEP = 0.02;

    /** Energy of the rectangle from the middle to cell (i, j). */
    private final double[][] within;

    private Coverage(double[][] within) {
        this.within = within;
    }

    /** The first mode of a bay held in this way, or why it cannot be told. */
    public static Estimate<Coverage> of(Skin skin, Bay bay, Support support) {
        Support sliding = support.clamped() ? Support.CLAMPED_SLIDING : Support.HINGED_SLIDING;
        return ShellModes.lowest(skin, bay, sliding).map(mode -> {
            boolean ritz = bay.isFlat() ? support.clamped() : support.fixed();
            ModeShape shape = ritz
                    ? FixedShell.solve(skin, bay, support.clamped(), mode).shape()
                    : ModeShape.single(support.clamped(), mode.lengthHalfWaves(), mode.widthHalfWaves());
            return new Coverage(accumulate(energy(bay, skin.poissonRatio(), shape)));
        });
    }

    /** Share under a patch of the bay's own proportions that covers this share of its area. */
    public double share(double areaShare) {
        double side = Math.sqrt(areaShare);
        return patch(side, side);
    }

    /** Share under a patch over these shares of the length and of the width. */
    public double patch(double lengthShare, double widthShare) {
        return at(lengthShare * CELLS, widthShare * CELLS) / within[CELLS][CELLS];
    }

    /**
     * The coverage from which each further piece does less than an average piece: where the share's slope falls below
     * one. A clamped bay's edges come late and would lift it again.
     */
    public double knee() {
        return knee(this::share, 1);
    }

    /**
     * The least coverage beyond which the effect grows by less than the given slope, or 1 if it never does.
     *
     * @param effect of the coverage, 0 to 1, in any unit
     * @param leastGain slope of the effect per unit of coverage that is still worth it
     */
    public static double knee(DoubleUnaryOperator effect, double leastGain) {
        double before = effect.applyAsDouble(0);
        for (int i = 1; i * STEP <= 1; i++) {
            double now = effect.applyAsDouble(i * STEP);
            if ((now - before) / STEP < leastGain) {
                return (i - 1) * STEP;
            }
            before = now;
        }
        return 1;
    }

    private double at(double x, double y) {
        int i = Math.min(CELLS - 1, (int) x);
        int j = Math.min(CELLS - 1, (int) y);
        double u = x - i;
        double v = y - j;
        return (1 - u) * ((1 - v) * within[i][j] + v * within[i][j + 1])
                + u * ((1 - v) * within[i + 1][j] + v * within[i + 1][j + 1]);
    }

    private static double[][] accumulate(double[][] energy) {
        double[][] sums = new double[CELLS + 1][CELLS + 1];
        for (int i = 0; i < CELLS; i++) {
            double row = 0;
            for (int j = 0; j < CELLS; j++) {
                row += energy[i][j];
                sums[i + 1][j + 1] = sums[i][j + 1] + row;
            }
        }
        return sums;
    }

    /** Energy density in the middle of each cell of the quarter between the bay's middle and one corner. */
    private static double[][] energy(Bay bay, double nu, ModeShape shape) {
        double[][][] shapes = shape.clamped() ? Grid.CLAMPED : Grid.HINGED;
        double[][][] x = select(shapes, shape.lengthShapes());
        double[][][] y = select(shapes, shape.widthShapes());
        double a = bay.length();
        double b = bay.width();
        double[][] xx = field(shape, x[2], y[0], 1 / (a * a));
        double[][] yy = field(shape, x[0], y[2], 1 / (b * b));
        double[][] xy = field(shape, x[1], y[1], 1 / (a * b));
        double[][] energy = new double[CELLS][CELLS];
        for (int i = 0; i < CELLS; i++) {
            for (int j = 0; j < CELLS; j++) {
                double sum = xx[i][j] + yy[i][j];
                energy[i][j] = sum * sum + 2 * (1 - nu) * (xy[i][j] * xy[i][j] - xx[i][j] * yy[i][j]);
            }
        }
        return energy;
    }

    private static double[][] field(ModeShape shape, double[][] x, double[][] y, double scale) {
        double[][] field = new double[CELLS][CELLS];
        for (int i = 0; i < CELLS; i++) {
            for (int n = 0; n < y.length; n++) {
                double along = 0;
                for (int m = 0; m < x.length; m++) {
                    along += shape.amplitudes()[m * y.length + n] * x[m][i];
                }
                for (int j = 0; j < CELLS; j++) {
                    field[i][j] += scale * along * y[n][j];
                }
            }
        }
        return field;
    }

    private static double[][][] select(double[][][] shapes, int[] which) {
        return Arrays.stream(shapes)
                .map(derivative -> Arrays.stream(which).mapToObj(m -> derivative[m]).toArray(double[][]::new))
                .toArray(double[][][]::new);
    }

    /** Beam shapes and their derivatives in the middle of each cell: [derivative][shape][cell]. */
    private static final class Grid {

        static final double[][][] HINGED = samples(BeamShape::hinged);
        static final double[][][] CLAMPED = samples(BeamShape::clamped);

        private static double[][][] samples(IntFunction<BeamShape> shape) {
            double[][][] samples = new double[3][RitzTables.MOST + 1][CELLS];
            for (int m = 1; m <= RitzTables.MOST; m++) {
                BeamShape beam = shape.apply(m);
                for (int derivative = 0; derivative < 3; derivative++) {
                    for (int i = 0; i < CELLS; i++) {
                        samples[derivative][m][i] = beam.at((i + 0.5) / CELLS / 2, derivative);
                    }
                }
            }
            return samples;
        }
    }
}
