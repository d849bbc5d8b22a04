package unthrum.cutting;

/** Guards for lengths and counts. */
final class Lengths {

    /** Longest length taken: 100 m in tenths of a millimetre; keeps areas and sums well inside a long. */
    static final int LONGEST = 1_000_000;

    private Lengths() {
    }

    static void requirePositive(String owner, String what, int value) {
        if (value < 1 || value > LONGEST) {
            throw new IllegalArgumentException(
                owner + ": " + what + " is " + value + ", expected 1 to " + LONGEST);
        }
    }
}
