package unthrum.physics;

/**
 * Deflection of a mode as a sum of products of beam shapes, about the middle of the bay.
 *
 * @param clamped beam shapes of clamped ends, else hinged
 * @param lengthShapes which beam shapes along the length
 * @param widthShapes which along the width
 * @param amplitudes one for each pair, the width's index running faster
 */
record ModeShape(boolean clamped, int[] lengthShapes, int[] widthShapes, double[] amplitudes) {

    static ModeShape single(boolean clamped, int m, int n) {
        return new ModeShape(clamped, new int[] {m}, new int[] {n}, new double[] {1});
    }

    /** The pair with the greatest amplitude: half-waves along the length and the width. */
    int[] strongest() {
        int strongest = 0;
        for (int i = 0; i < amplitudes.length; i++) {
            strongest = Math.abs(amplitudes[i]) > Math.abs(amplitudes[strongest]) ? i : strongest;
        }
        return new int[] {
            lengthShapes[strongest / widthShapes.length], widthShapes[strongest % widthShapes.length]
        };
    }
}
