package unthrum.reading;

/**
 * Holds the values of one file against each other and reports what cannot be. The value may be partial: where
 * {@link Places#sound} says no, what is required may be null and what is optional may be missing.
 */
@FunctionalInterface
public interface Check<T> {
    void check(T value, Places places);

    /** Both, this one first. */
    default Check<T> and(Check<T> other) {
        return (value, places) -> {
            check(value, places);
            other.check(value, places);
        };
    }
}
