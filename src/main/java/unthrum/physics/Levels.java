package unthrum.physics;

/** Sums and differences of sound levels from sources that do not keep step with one another, dB. */
public final class Levels {
    private Levels() {
    }

    /** Energy sum L = 10 lg Σ 10^(Lᵢ/10); the largest level is taken out first, so no level overflows. */
    public static double sum(double... levels) {
        if (levels.length == 0) {
            throw new IllegalArgumentException("no levels to sum, expected at least one");
        }
        double largest = levels[0];
        for (double level : levels) {
            largest = Math.max(largest, level);
        }
        double energy = 0;
        for (double level : levels) {
            energy += Math.pow(10, (level - largest) / 10);
        }
        return largest + 10 * Math.log10(energy);
    }

    /**
     * Takes a background away from a total: L = 10 lg (10^(Lt/10) − 10^(Lb/10)).
     *
     * @throws IllegalArgumentException if the background is not below the total
     */
    public static double without(double total, double background) {
        if (!(background < total)) {
            throw new IllegalArgumentException("background is " + background + " dB, expected below " + total + " dB");
        }
        return total + 10 * Math.log10(1 - Math.pow(10, (background - total) / 10));
    }
}
