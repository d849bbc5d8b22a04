package unthrum.cutting;

/**
 * How well a blank fits into a gap; less is better. The rules are those compared by Jylänki, 'A thousand ways to
 * pack the bin', 2010.
 */
enum FitRule {
    /** The gap that leaves least along the side where less is left. */
    SHORT_SIDE {
        @Override
        long score(int gapWidth, int gapHeight, int width, int height) {
            int beside = gapWidth - width;
            int above = gapHeight - height;
            return (long) Math.min(beside, above) * WEIGHT + Math.max(beside, above);
        }
    },
    /** The smallest gap. */
    AREA {
        @Override
        long score(int gapWidth, int gapHeight, int width, int height) {
            return ((long) gapWidth * gapHeight - (long) width * height);
        }
    };

    private static final long WEIGHT = 4L * Lengths.LONGEST;

    abstract long score(int gapWidth, int gapHeight, int width, int height);
}
