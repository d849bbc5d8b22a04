package unthrum.reasoning.change;

import java.util.OptionalDouble;
import unthrum.reading.Quantity;
import unthrum.reasoning.change.Change.Turn;

/** How far a turn goes against how well the fact is known. */
final class Measured {

    private static final double SLACK = 1e-9;

    private Measured() {
    }

    /** Whether a measurement, or a second one, may well find the other value. */
    static boolean mayBeFound(Turn turn) {
        if (!turn.lever().stated()) {
            return true;
        }
        if (!turn.lever().isScale()) {
            return turn.lever().how().judged().orElse(false);
        }
        double errs = turn.lever().how().errs().map(Quantity::si).orElse(0.0);
        return distance(turn).orElseThrow() <= errs + SLACK;
    }

    /** Whether a number grows. */
    static boolean upward(Turn turn) {
        return ((Quantity) turn.to()).si() > ((Quantity) turn.lever().today().orElseThrow()).si();
    }

    /** How far the value moves, in SI; absent for words. */
    static OptionalDouble distance(Turn turn) {
        return turn.lever().isScale()
                ? OptionalDouble.of(Math.abs(((Quantity) turn.to()).si()
                        - ((Quantity) turn.lever().today().orElseThrow()).si()))
                : OptionalDouble.empty();
    }
}
