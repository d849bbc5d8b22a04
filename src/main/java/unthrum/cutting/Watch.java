package unthrum.cutting;

import java.time.Duration;

/** Counts steps and time of one search, and tells its listener. */
final class Watch {

    private static final int STEPS_A_REPORT = 4096;

    private final Search search;
    private final int bound;
    private final long start = System.nanoTime();
    private long steps;
    private int cost = Integer.MAX_VALUE;
    private boolean over;

    Watch(Search search, int bound) {
        this.search = search;
        this.bound = bound;
    }

    /** Whether one more step may be done; counts it. */
    boolean step() {
        if (steps >= search.steps() || search.cancelled().getAsBoolean()
            || System.nanoTime() - start >= search.time().toNanos()) {
            over = true;
            return false;
        }
        steps++;
        if (steps % STEPS_A_REPORT == 0) {
            report();
        }
        return true;
    }

    /** Whether a step was refused: the search ends. */
    boolean over() {
        return over;
    }

    void found(int newCost) {
        cost = newCost;
        report();
    }

    long steps() {
        return steps;
    }

    private void report() {
        search.listener().accept(
            new Search.Progress(steps, Duration.ofNanos(System.nanoTime() - start), cost, bound));
    }
}
