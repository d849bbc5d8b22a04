package unthrum.physics;

/**
 * Integrals of a beam shape φ over a stretch about its middle, for a damping patch that lies there. Lengths are those
 * of a unit beam, its middle at nought. ψ = (ξ/l)ᵏ, k = 3 beside an odd shape and 2 beside an even one, is how a facing
 * that is cut free at ±l creeps back there.
 */
final class BeamPatch {

    private static final int CELLS = 40;
    private static final double GAUSS = 0.5 / Math.sqrt(3);
    private static final BeamPatch[][] KEPT = new BeamPatch[2][RitzTables.MOST + 1];

    private final int power;

    /** Half the integrals up to each cell: φ², φ'², φ''², φφ'', φ'ξᵏ, φ''kξᵏ⁻¹, φkξᵏ⁻¹. */
    private final double[][] upTo = new double[7][CELLS + 1];

    private BeamPatch(boolean clamped, int m) {
        BeamShape shape = clamped ? BeamShape.clamped(m) : BeamShape.hinged(m);
        power = m % 2 == 1 ? 3 : 2;
        double width = 0.5 / CELLS;
        for (int i = 0; i < CELLS; i++) {
            double[] first = integrands(shape, (i + 0.5 - GAUSS) * width);
            double[] second = integrands(shape, (i + 0.5 + GAUSS) * width);
            for (int k = 0; k < upTo.length; k++) {
                upTo[k][i + 1] = upTo[k][i] + (first[k] + second[k]) / 2 * width;
            }
        }
    }

    static synchronized BeamPatch of(boolean clamped, int m) {
        BeamPatch[] kept = KEPT[clamped ? 1 : 0];
        if (kept[m] == null) {
            kept[m] = new BeamPatch(clamped, m);
        }
        return kept[m];
    }

    private double[] integrands(BeamShape shape, double x) {
        double w = shape.at(x, 0);
        double slope = shape.at(x, 1);
        double bend = shape.at(x, 2);
        double steep = power * Math.pow(x, power - 1);
        return new double[] {w * w, slope * slope, bend * bend, w * bend, slope * Math.pow(x, power), bend * steep,
            w * steep};
    }

    /**
     * The integrals over a stretch of a beam with a length: of w², w'², w''², w w'', w'ψ, w''ψ', w ψ', ψ² and ψ'², each
     * divided by that length.
     */
    record Integrals(double move, double slope, double bend, double moveBend, double slopeBack, double bendBack,
                     double moveBack, double back, double backSlope) {}

    /** @param share of the beam's length under the patch, 0 to 1 */
    Integrals over(double share, double length) {
        double half = share / 2;
        double square = length * length;
        double scale = Math.pow(half, power);
        return new Integrals(both(0, half), both(1, half) / square, both(2, half) / (square * square),
                both(3, half) / square, both(4, half) / (scale * length), both(5, half) / (scale * square * length),
                both(6, half) / (scale * length), share / (2 * power + 1),
                2.0 * power * power / (half * (2 * power - 1) * square));
    }

    private double both(int which, double half) {
        double cell = Math.min(half * 2 * CELLS, CELLS);
        int i = Math.min(CELLS - 1, (int) cell);
        return 2 * (upTo[which][i] + (cell - i) * (upTo[which][i + 1] - upTo[which][i]));
    }
}
