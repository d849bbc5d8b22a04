package unthrum.physics;

import java.util.function.ToDoubleFunction;

/**
 * What grows with the cover of one mode of a bay. A stiff core under one large facing is sheared less than under a
 * small one, but a large patch may be laid in pieces that do what small ones do: more cover never does less. The mode
 * is computed for a few shares of the bay, and its effect runs straight between them.
 */
public final class Cover {

    static final double[] LEVELS = {0, 0.125, 0.25, 0.5, 0.75, 1};

    private final CoveredMode[] modes = new CoveredMode[LEVELS.length];

    /** @param poissonRatio of the skin */
    public Cover(Mode mode, Bay bay, boolean clamped, double poissonRatio) {
        for (int i = 1; i < LEVELS.length; i++) {
            modes[i] = CoveredMode.of(mode, bay, clamped, LEVELS[i], poissonRatio);
        }
    }

    /** The level that a cover lies below or at. */
    static int above(double coverage) {
        int above = 1;
        while (above < LEVELS.length - 1 && LEVELS[above] < coverage) {
            above++;
        }
        return above;
    }

    /** How far a cover lies from the level below it to the one above, 0 to 1. */
    static double between(int above, double coverage) {
        return (coverage - LEVELS[above - 1]) / (LEVELS[above] - LEVELS[above - 1]);
    }

    /** An effect that is nought without cover, laid in pieces: the best of all covers up to this one. */
    public double inPieces(double coverage, ToDoubleFunction<CoveredMode> effect) {
        int above = above(coverage);
        double below = 0;
        for (int i = 1; i < above; i++) {
            below = Math.max(below, effect.applyAsDouble(modes[i]));
        }
        double t = between(above, coverage);
        return below * (1 - t) + Math.max(below, effect.applyAsDouble(modes[above])) * t;
    }

    /** The same of one piece: what this cover has in common with all that are larger. */
    public double inOnePiece(double coverage, ToDoubleFunction<CoveredMode> effect) {
        int above = above(coverage);
        double least = Double.POSITIVE_INFINITY;
        for (int i = LEVELS.length - 1; i >= above; i--) {
            least = Math.min(least, effect.applyAsDouble(modes[i]));
        }
        double below = above == 1 ? 0 : Math.min(least, effect.applyAsDouble(modes[above - 1]));
        double t = between(above, coverage);
        return below * (1 - t) + least * t;
    }
}
