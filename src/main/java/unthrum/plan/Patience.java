package unthrum.plan;

import java.time.Duration;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * How long the sharing of what is scarce may take.
 *
 * @param time      so long; without it as much calculation as on any other computer, so that the plan is the same there
 * @param cancelled asked now and then, whether to end with the best found so far
 */
public record Patience(Optional<Duration> time, BooleanSupplier cancelled) {

    /** As much as usual, and nobody calls it off. */
    public static Patience usual() {
        return new Patience(Optional.empty(), () -> false);
    }
}
