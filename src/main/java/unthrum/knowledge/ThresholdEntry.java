package unthrum.knowledge;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import unthrum.facts.Threshold;
import unthrum.reading.Quantity;

/**
 * A number of the trade as its file holds it: value with unit, meaning, source, and when somebody last checked it.
 *
 * @param tried where nobody published it, the range that was tried and what it changes in the plans of the scenarios
 */
public record ThresholdEntry(String threshold, Quantity value, String meaning, String source, Optional<String> tried,
                             LocalDate checked) {

    record File(List<ThresholdEntry> thresholds) {
    }

    /** The number as rules see it. */
    public Threshold number() {
        return new Threshold(threshold, value.si(), value.dimension());
    }
}
