package unthrum.audit;

import unthrum.reading.Dimension;

/** A number of the job, in SI, with what it is. */
public record Figure(String name, double value, Dimension dimension) {

    @Override
    public String toString() {
        return name + " " + dimension.show(value);
    }
}
