package unthrum.cli;

import java.io.PrintStream;
import java.time.Duration;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import unthrum.pieces.Wishes;
import unthrum.plan.Patience;

/** Shows on a terminal where a search stands, once it has taken more than a second. */
final class SearchProgress implements Consumer<Wishes.Progress>, AutoCloseable {

    private static final long FIRST = 1_000_000_000L;
    private static final long AGAIN = 250_000_000L;
    private static final String BLANK = "\r" + " ".repeat(70) + "\r";

    private final PrintStream err;
    private final boolean terminal;
    private long next = System.nanoTime() + FIRST;
    private boolean shown;

    SearchProgress(Surroundings surroundings) {
        this.err = surroundings.err();
        this.terminal = surroundings.terminal();
    }

    @Override
    public void accept(Wishes.Progress progress) {
        if (progress.at().cost() != Integer.MAX_VALUE) {
            show("Laying out " + progress.material());
        }
    }

    /** The patience of one who sees where the sharing stands and can call it off. */
    Patience sharing(Optional<Duration> time, BooleanSupplier cancelled) {
        return new Patience(time, () -> {
            show("Sharing what is scarce");
            return cancelled.getAsBoolean();
        });
    }

    private void show(String what) {
        if (terminal && System.nanoTime() >= next) {
            next = System.nanoTime() + AGAIN;
            shown = true;
            String line = what + " (Ctrl-C takes the best so far)";
            err.print(BLANK + line.substring(0, Math.min(line.length(), BLANK.length() - 2)));
            err.flush();
        }
    }

    /** Leaves the terminal as it was. */
    @Override
    public void close() {
        if (shown) {
            err.print(BLANK);
            err.flush();
        }
    }
}
