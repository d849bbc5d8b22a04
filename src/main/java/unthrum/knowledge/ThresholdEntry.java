package unthrum.knowledge;

import java.util.List;
import unthrum.facts.Threshold;
import unthrum.reading.Dimension;

/** A number of the trade as its file holds it: value with unit, meaning, source, and when somebody last checked it. */
public record ThresholdEntry(String threshold, String value, String meaning, String source, String checked) {

    record File(List<ThresholdEntry> thresholds) {
    }

    /** The number as rules see it. */
    public Threshold number() {
        int space = value.indexOf(' ');
        double written = Double.parseDouble(space < 0 ? value : value.substring(0, space));
        String symbol = space < 0 ? "" : value.substring(space + 1);
        for (Dimension dimension : Dimension.values()) {
            var unit = dimension.unitOf(symbol);
            if (unit.isPresent()) {
                return new Threshold(threshold, unit.get().toSi(written), dimension);
            }
        }
        throw new IllegalStateException("threshold " + threshold + ": unknown unit in '" + value + "'");
    }
}
