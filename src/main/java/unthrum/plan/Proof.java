package unthrum.plan;

/**
 * How sure it is that nothing shared otherwise would be better.
 *
 * @param standing how it is known
 * @param served   what the plan serves, the share that it takes of what the bare vehicle gives off, weighted by the aims
 * @param bound    what no plan within the limits could exceed, in the same measure
 */
public record Proof(Standing standing, double served, double bound) {

    /** How the plan was judged. */
    public enum Standing {
        /** Nothing runs short: every panel gets the best that it could by itself. */
        NOTHING_SHORT,
        /** The search has ruled out every better plan. */
        PROVED_BEST,
        /** Time ran out before every better plan was ruled out. */
        BEST_FOUND,
        /** The exact search cannot run on this computer; shared by rank alone. */
        BY_RANK
    }

    public boolean isBest() {
        return standing == Standing.NOTHING_SHORT || standing == Standing.PROVED_BEST;
    }

    /** Whether no plan serves more, though one as good may cost or weigh less. */
    public boolean isMost() {
        return bound <= served;
    }

    /** How much more a plan could be worth at most, as a share of what the bare vehicle gives off. */
    public double open() {
        return Math.max(0, bound - served);
    }

    /** How much better a plan could be at most, as a share of what this one serves; 0 when it is the best. */
    public double gap() {
        return isBest() || served == 0 ? 0 : Math.max(0, bound / served - 1);
    }
}
