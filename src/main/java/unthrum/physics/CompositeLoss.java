package unthrum.physics;

/**
 * Transmission loss of areas side by side, among them bare patches and open holes: the mean of what each area lets
 * through, TL = −10 lg(ΣSᵢτᵢ/ΣSᵢ) with τ = 10^(−TL/10). An open hole lets everything pass, τ = 1: a little more than
 * that near its own resonance, less when it is small against the wavelength or deep, so its cost is an estimate.
 * Crocker, Handbook of Noise and Vibration Control.
 */
public final class CompositeLoss {
    private CompositeLoss() {
    }

    /** Share of the sound power that passes, τ = 10^(−TL/10). */
    public static double transmission(double loss) {
        return Math.pow(10, -Bounds.notNegative("transmission loss", loss) / 10);
    }

    /** TL = −10 lg τ, dB. */
    public static double loss(double transmission) {
        return -10 * Math.log10(Bounds.positive("transmission", transmission)) + 0.0;
    }

    /**
     * Areas in m² (or as shares) and their transmission losses in dB, in the same order; an open hole has 0 dB.
     */
    public static double of(double[] areas, double[] losses) {
        if (areas.length != losses.length) {
            throw new IllegalArgumentException(
                    areas.length + " areas and " + losses.length + " transmission losses, expected as many of each");
        }
        double area = 0;
        double passed = 0;
        for (int i = 0; i < areas.length; i++) {
            area += Bounds.notNegative("area", areas[i]);
            passed += areas[i] * transmission(losses[i]);
        }
        return loss(passed / Bounds.positive("total area", area));
    }

    /** A panel treated over a share of its area and bare over the rest. */
    public static double covered(double treatedLoss, double bareLoss, double coverage) {
        double share = Bounds.share("coverage", coverage);
        return loss(share * transmission(treatedLoss) + (1 - share) * transmission(bareLoss));
    }

    /** A panel with an open share of its area. */
    public static double withOpening(double panelLoss, double openShare) {
        return covered(0, panelLoss, openShare);
    }

    /** The most that any wall reaches with an open share s: −10 lg s, dB (20 dB at one per cent). No hole: no cap. */
    public static double ceiling(double openShare) {
        return openShare == 0 ? Double.POSITIVE_INFINITY : loss(Bounds.share("open share", openShare));
    }

    /** What the open share costs a panel, dB. */
    public static double leakCost(double panelLoss, double openShare) {
        return panelLoss - withOpening(panelLoss, openShare);
    }

    /**
     * The weakest path: position of the area that lets most sound through, Sᵢτᵢ. The next effort belongs there.
     */
    public static int weakest(double[] areas, double[] losses) {
        of(areas, losses);
        int weakest = 0;
        for (int i = 1; i < areas.length; i++) {
            if (areas[i] * transmission(losses[i]) > areas[weakest] * transmission(losses[weakest])) {
                weakest = i;
            }
        }
        return weakest;
    }
}
