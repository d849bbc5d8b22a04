package unthrum.cutting;

import java.time.Duration;

/** Counts steps and time of one search, and tells its listener. */
final class Watch {

    private static final int STEPS_A_REPORT = 4096;

    private final Search search;
    private int bound;
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
        if (steps >= search.steps() || ended()) {
            over = true;
            return false;
        }
        steps++;
        if (steps % STEPS_A_REPORT == 0) {
            report();
        }
        return true;
    }

    /** Whether the search is called off or its time is up. */
    boolean ended() {
        return search.cancelled().getAsBoolean() || System.nanoTime() - start >= search.time().toNanos();
    }

    /** Proved lower bound of the cost. */
    int bound() {
        return bound;
    }

    /** A better bound is proved. */
    void raiseBound(int newBound) {
        bound = newBound;
        report();
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
