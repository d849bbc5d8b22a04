package unthrum.physics;

import java.util.function.DoubleUnaryOperator;

/**
 * How much of a mode's bending energy lies under a patch in the middle of a bay: all that a damping patch can reach.
 *
 * <p>The energy density is w_xx² + w_yy² + 2ν w_xx w_yy + 2(1 − ν) w_xy², integrated over the patch and over the bay
 * for a product of two beam shapes. Hinged edges have a closed form; clamped ones agree with a converged Ritz solution
 * within 0.005. The patch is taken as thin: it leaves the mode's shape as it was. Source: modal strain energy method
 * (Ungar and Kerwin 1962), from memory.
 */
public final class Coverage {

    private static final double STEP = 0.005;

    private Coverage() {}

    /**
     * First mode, hinged edges, patch of the bay's own proportions covering the area share p: with q = √p,
     * s = sin(πq)/π, S = (q + s)/2, C = (q − s)/2, A = 1/a², B = 1/b²:
     * 4 [S² − 2(1 − ν) AB/(A + B)² (S² − C²)].
     */
    public static double hinged(Bay bay, double poissonRatio, double areaShare) {
        double q = Math.sqrt(areaShare);
        double s = Math.sin(Math.PI * q) / Math.PI;
        double big = (q + s) / 2;
        double small = (q - s) / 2;
        double a = Math.pow(bay.length(), -2);
        double b = Math.pow(bay.width(), -2);
        double mixed = 2 * (1 - poissonRatio) * a * b / Math.pow(a + b, 2);
        return 4 * (big * big - mixed * (big * big - small * small));
    }

    /** First mode, clamped edges, patch of the bay's own proportions covering the area share p. */
    public static double clamped(Bay bay, double poissonRatio, double areaShare) {
        double side = Math.sqrt(areaShare);
        return patch(bay, poissonRatio, true, 1, 1, side, side);
    }

    /**
     * Mode (m, n), patch in the middle over the given shares of the length and of the width.
     *
     * @param clamped edges held against turning, else hinged
     */
    public static double patch(
            Bay bay, double poissonRatio, boolean clamped, int m, int n, double lengthShare, double widthShare) {
        BeamShape x = clamped ? BeamShape.clamped(m) : BeamShape.hinged(m);
        BeamShape y = clamped ? BeamShape.clamped(n) : BeamShape.hinged(n);
        return energy(bay, poissonRatio, x, y, lengthShare, widthShare) / energy(bay, poissonRatio, x, y, 1, 1);
    }

    /**
     * The knee: the least coverage beyond which the effect grows by less than the given slope, or 1 if it never does.
     * With a share of energy as effect and slope 1, each further piece from there on does less than an average piece.
     *
     * @param effect of the coverage, 0 to 1, in any unit
     * @param leastGain slope of the effect per unit of coverage that is still worth it
     */
    public static double knee(DoubleUnaryOperator effect, double leastGain) {
        double before = effect.applyAsDouble(0);
        for (double covered = STEP; covered < 1; covered += STEP) {
            double now = effect.applyAsDouble(covered);
            if ((now - before) / STEP < leastGain) {
                return covered - STEP;
            }
            before = now;
        }
        return 1;
    }

    private static double energy(Bay bay, double nu, BeamShape x, BeamShape y, double cx, double cy) {
        double a = bay.length() * bay.length();
        double b = bay.width() * bay.width();
        double alongX = product(x, 2, 2, cx) * product(y, 0, 0, cy) / (a * a);
        double alongY = product(x, 0, 0, cx) * product(y, 2, 2, cy) / (b * b);
        double both = product(x, 0, 2, cx) * product(y, 0, 2, cy) / (a * b);
        double twist = product(x, 1, 1, cx) * product(y, 1, 1, cy) / (a * b);
        return alongX + alongY + 2 * nu * both + 2 * (1 - nu) * twist;
    }

    private static double product(BeamShape shape, int first, int second, double share) {
        return BeamShape.integral(t -> shape.at(t, first) * shape.at(t, second), -share / 2, share / 2);
    }
}
