package unthrum.cutting;

import java.time.Duration;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * How long and how to look for a layout. The same task, seed and number of steps give the same layout; a longer
 * search goes on where a shorter one stopped, so it never ends worse.
 *
 * @param seed      of the random choices
 * @param steps     at most so many steps
 * @param time      at most so long
 * @param listener  told of progress, now and then and at every better layout
 * @param cancelled asked often; once true the best layout so far is returned
 */
public record Search(long seed, long steps, Duration time, Consumer<Progress> listener, BooleanSupplier cancelled) {

    private static final Duration FOREVER = Duration.ofDays(365);

    /**
     * Where the search stands.
     *
     * @param steps   steps done
     * @param elapsed time since the start
     * @param cost    sheets or roll length of the best layout so far
     * @param bound   proved lower bound of that cost
     */
    public record Progress(long steps, Duration elapsed, int cost, int bound) {
    }

    /** A search of so many steps, however long it takes: the same on every machine. */
    public static Search ofSteps(long seed, long steps) {
        return new Search(seed, steps, FOREVER, progress -> { }, () -> false);
    }

    /** A search of so much time. */
    public static Search ofTime(long seed, Duration time) {
        return new Search(seed, Long.MAX_VALUE, time, progress -> { }, () -> false);
    }

    public Search listener(Consumer<Progress> newListener) {
        return new Search(seed, steps, time, newListener, cancelled);
    }

    public Search cancelled(BooleanSupplier newCancelled) {
        return new Search(seed, steps, time, listener, newCancelled);
    }
}
