package unthrum.reasoning;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The steps down from the best that could be done against an airborne source: on each the best layup inside the
 * limits, or none.
 *
 * @param room the stack that the limits leave, in m; absent when none limits it
 */
public record Ladder(Optional<Scored> decoupledBarrier, Optional<Scored> barrierLaidDirect, Optional<Scored> noBarrier,
                     OptionalDouble room) {
}
