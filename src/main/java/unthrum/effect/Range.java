package unthrum.effect;

import java.util.List;

/** A value that is only known to lie between two bounds, and about where. */
public record Range(double low, double about, double high) {

    public Range {
        if (!(low <= about && about <= high)) {
            throw new IllegalArgumentException("a range runs upwards, got " + low + ", " + about + ", " + high);
        }
    }

    /** Least, about and most, whichever way the ends come. */
    static Range of(double[] three) {
        return new Range(Math.min(three[0], Math.min(three[1], three[2])), three[1],
                Math.max(three[0], Math.max(three[1], three[2])));
    }

    /** Ends and middles added up: what is off on one panel is off alike on the others. */
    static Range sum(List<Range> ranges) {
        return new Range(ranges.stream().mapToDouble(Range::low).sum(), ranges.stream().mapToDouble(Range::about).sum(),
                ranges.stream().mapToDouble(Range::high).sum());
    }

    static Range exactly(double value) {
        return new Range(value, value, value);
    }
}
