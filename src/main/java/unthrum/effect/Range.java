package unthrum.effect;

/** A value that is only known to lie between two bounds, and about where. */
public record Range(double low, double about, double high) {

    public Range {
        if (!(low <= about && about <= high)) {
            throw new IllegalArgumentException("a range runs upwards, got " + low + ", " + about + ", " + high);
        }
    }

    static Range exactly(double value) {
        return new Range(value, value, value);
    }
}
