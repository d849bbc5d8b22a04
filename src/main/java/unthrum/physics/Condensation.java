package unthrum.physics;

/**
 * How likely, and for how many hours, a face lies below the dew point of the air that meets it, where both are only
 * known within a normal spread.
 */
public final class Condensation {

    /** Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.17: error below 7.5e-8. */
    private static final double P = 0.2316419;
    private static final double[] B = {0.319381530, -0.356563782, 1.781477937, -1.821255978, 1.330274429};

    private Condensation() {
    }

    /**
     * Likelihood that a face lies below the dew point.
     *
     * @param below  K by which it is reckoned to lie below; negative above
     * @param spread standard deviation of that figure, K
     */
    public static double likelihood(double below, double spread) {
        return normal(below / Bounds.positive("spread", spread));
    }

    /**
     * Share of a season's hours in which a face lies below the dew point. The air outside is spread normally over
     * the season; the face follows it by its fall, as steady heat makes it (1 − f of ISO 13788), so that its own
     * temperature is normal too. Never falls as the fall rises, while the season's mean stays below the room.
     *
     * @param fall   (t_in − t_face)/(t_in − t_out), 0 to 1
     * @param season air outside on average and its standard deviation
     * @param inside °C
     * @param spread standard deviation of the face less the dew point that the reckoning itself has, K
     */
    public static double hours(double fall, Season season, double inside, double dewPoint, double spread) {
        double face = inside - Bounds.share("fall", fall) * (inside - season.mean);
        return likelihood(dewPoint - face, Math.hypot(fall * season.spread, spread));
    }

    /** Air outside over the cold season: mean in °C and standard deviation in K. */
    public record Season(double mean, double spread) {
        public Season {
            Bounds.celsius("mean of the season", mean);
            Bounds.notNegative("spread of the season", spread);
        }
    }

    /** The standard normal distribution. */
    static double normal(double z) {
        double t = 1 / (1 + P * Math.abs(z));
        double tail = 0;
        for (int i = B.length - 1; i >= 0; i--) {
            tail = t * (B[i] + tail);
        }
        tail *= Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
        return z > 0 ? 1 - tail : tail;
    }
}
