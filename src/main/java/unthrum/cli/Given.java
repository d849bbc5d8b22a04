package unthrum.cli;

import java.time.Duration;
import java.util.Optional;
import unthrum.reading.Dimension;
import unthrum.reading.Quantity;

/** Reads what options give with a unit. */
final class Given {

    private static final double SHORTEST = 0.001;
    private static final double LONGEST = 86_400;

    private Given() {
    }

    /** The time that a search may take, if one is given. */
    static Optional<Duration> time(String text) {
        return Optional.ofNullable(text).map(t -> Duration.ofMillis(Math.round(1000 * si(t, Dimension.TIME)
                .filter(s -> s >= SHORTEST && s <= LONGEST)
                .orElseThrow(() -> new WrongUse("--time '" + t + "': give a time such as '30 s' or '5 min', up to 24 h")))));
    }

    /** The length in metres, if one is given. */
    static Optional<Double> length(String option, String text, double longest) {
        return Optional.ofNullable(text).map(t -> si(t, Dimension.LENGTH).filter(m -> m >= 0 && m <= longest)
                .orElseThrow(() -> new WrongUse(option + " '" + t + "': give a length from "
                        + Dimension.LENGTH.show(0) + " to " + Dimension.LENGTH.show(longest))));
    }

    private static Optional<Double> si(String text, Dimension dimension) {
        try {
            return Optional.of(Quantity.of(text)).filter(q -> q.dimension() == dimension).map(Quantity::si);
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
