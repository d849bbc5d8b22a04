package unthrum.physics;

import java.util.OptionalDouble;

/** What the added layers weigh, and how high they sit. Plain statics; no source needed. */
public final class Balance {
    private Balance() {
    }

    /** Sum of the masses, kg. */
    public static double total(double... masses) {
        double total = 0;
        for (double mass : masses) {
            total += Bounds.notNegative("mass", mass);
        }
        return total;
    }

    /**
     * Height of the centre of the added mass, Σmᵢhᵢ/Σmᵢ, m; none where nothing was added.
     *
     * @param heights above the ground (or any one datum), in the order of the masses
     */
    public static OptionalDouble centreHeight(double[] masses, double[] heights) {
        if (masses.length != heights.length) {
            throw new IllegalArgumentException(
                    masses.length + " masses and " + heights.length + " heights, expected as many of each");
        }
        double total = total(masses);
        double moment = 0;
        for (int i = 0; i < masses.length; i++) {
            moment += masses[i] * heights[i];
        }
        return total == 0 ? OptionalDouble.empty() : OptionalDouble.of(moment / total);
    }

    /** Share of the payload left that the added mass takes; above 1 the vehicle is overloaded. */
    public static double shareOfPayload(double addedMass, double payloadLeft) {
        return Bounds.notNegative("added mass", addedMass) / Bounds.positive("payload left", payloadLeft);
    }
}
