package unthrum.physics;

/**
 * How far a formula for a frequency was found off, as shares of it.
 *
 * @param high the most that it reads too high
 * @param low the most that it reads too low
 */
public record FormulaError(double high, double low) {

    /** A range of such readings with their error. */
    public Band around(double lowest, double highest) {
        return new Band(lowest / (1 + high), highest * (1 + low));
    }
}
