package unthrum.pieces;

import java.time.Duration;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import unthrum.cutting.CutRule;
import unthrum.cutting.Search;

/**
 * How the fitter wants it cut.
 *
 * @param gap       between neighbouring pieces, m; else what the usual tool takes
 * @param time      how long to look in all; else a fixed number of steps, so that the layout is the same everywhere
 * @param listener  told where the search stands
 * @param cancelled once true the best layouts so far are taken
 */
public record Wishes(CutRule cuts, Optional<Double> gap, long seed, Optional<Duration> time,
                     Consumer<Progress> listener, BooleanSupplier cancelled) {

    /** Where the search stands. */
    public record Progress(String material, Search.Progress at) {
    }

    /** Free cuts, the usual gap, a fixed search. */
    public static Wishes usual() {
        return new Wishes(CutRule.FREE, Optional.empty(), 1, Optional.empty(), progress -> { }, () -> false);
    }

    /** With somebody who is told where the search stands and may end it. */
    public Wishes heard(Consumer<Progress> newListener, BooleanSupplier newCancelled) {
        return new Wishes(cuts, gap, seed, time, newListener, newCancelled);
    }

    public Wishes cuts(CutRule newCuts) {
        return new Wishes(newCuts, gap, seed, time, listener, cancelled);
    }
}
