package unthrum.facts;

import unthrum.reading.Dimension;

/** A number of the trade that rules compare with: its id, value in SI, and kind of quantity. */
public record Threshold(String id, double value, Dimension dimension) {
    @Override
    public String toString() {
        return dimension.show(value);
    }
}
