package unthrum.physics;

import java.util.OptionalDouble;

/** What the added layers weigh, how high they sit and what a hinged lid can carry. Plain statics; no source needed. */
public final class Balance {
    /** Standard acceleration of free fall, m/s² (ISO 80000-3). */
    public static final double GRAVITY = 9.80665;

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

    /** How far the added mass lifts the centre of the whole vehicle, m; negative where it lowers it. */
    public static double centreShift(double vehicleMass, double vehicleCentre, double addedMass, double addedCentre) {
        Bounds.notNegative("added mass", addedMass);
        return addedMass * (addedCentre - vehicleCentre) / (Bounds.positive("vehicle mass", vehicleMass) + addedMass);
    }

    /** Share of the payload left that the added mass takes; above 1 the vehicle is overloaded. */
    public static double shareOfPayload(double addedMass, double payloadLeft) {
        return Bounds.notNegative("added mass", addedMass) / Bounds.positive("payload left", payloadLeft);
    }

    /**
     * Moment of the added mass about the hinge of a lid, m·g·r, N·m.
     *
     * @param arm level distance from the hinge to the centre of the added mass with the lid held open, m
     */
    public static double lidMoment(double addedMass, double arm) {
        return Bounds.notNegative("added mass", addedMass) * GRAVITY * Bounds.notNegative("lever arm", arm);
    }

    /** What the struts keep in hand, N·m; negative where the lid would sink. */
    public static double strutReserve(double strutMargin, double addedMass, double arm) {
        return Bounds.notNegative("strut margin", strutMargin) - lidMoment(addedMass, arm);
    }

    /** The most that may be added to a lid at that arm, kg; no bound with the mass on the hinge line. */
    public static OptionalDouble lidAllowance(double strutMargin, double arm) {
        Bounds.notNegative("strut margin", strutMargin);
        return arm == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(strutMargin / (GRAVITY * Bounds.positive("lever arm", arm)));
    }
}
