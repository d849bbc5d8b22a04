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

    /** Beam shapes and their derivatives (0 to 2) at the given places: [derivative][shape][place]. */
    static double[][][] samples(boolean clamped, int[] shapes, double[] places) {
        double[][][] samples = new double[3][shapes.length][places.length];
        for (int s = 0; s < shapes.length; s++) {
            BeamShape beam = clamped ? BeamShape.clamped(shapes[s]) : BeamShape.hinged(shapes[s]);
            for (int derivative = 0; derivative < 3; derivative++) {
                for (int i = 0; i < places.length; i++) {
                    samples[derivative][s][i] = beam.at(places[i], derivative);
                }
            }
        }
        return samples;
    }
}
