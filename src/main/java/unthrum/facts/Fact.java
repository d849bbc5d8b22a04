package unthrum.facts;

import java.util.Set;

/**
 * Something known of the vehicle. Every number is finite: what the survey left open carries the cautious
 * assumption, and its component's name stands in {@link #assumed()}.
 */
public interface Fact {

    /** The panel it belongs to; empty for the vehicle. */
    String panel();

    /** The components whose values were assumed, not stated. */
    default Set<String> assumed() {
        return Set.of();
    }

    /** Where it holds. */
    default Place place() {
        return Place.of(panel());
    }
}
