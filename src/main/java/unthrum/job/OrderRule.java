package unthrum.job;

import java.util.List;
import java.util.Optional;

/**
 * A habit of the trade: kinds of step that come before others.
 *
 * @param order  its id, beside those of the rules
 * @param before the kinds that come first; all others when absent
 */
public record OrderRule(String order, Optional<List<String>> before, List<String> then, Where where, String because,
                        String source) {

    /** Between which areas it holds. A step of the whole vehicle is in every area. */
    public enum Where {
        SAME_AREA {
            @Override
            boolean holds(int first, int second, boolean secondWalkedOn) {
                return first == second;
            }
        },
        EVERYWHERE {
            @Override
            boolean holds(int first, int second, boolean secondWalkedOn) {
                return true;
            }
        },
        LOWER_AREAS {
            @Override
            boolean holds(int first, int second, boolean secondWalkedOn) {
                return first < second;
            }
        },
        SAME_STEP_IN_LOWER_AREAS {
            @Override
            boolean holds(int first, int second, boolean secondWalkedOn) {
                return first < second;
            }
        },
        /** Whoever does the first stands on the area of the second. */
        UNDERFOOT {
            @Override
            boolean holds(int first, int second, boolean secondWalkedOn) {
                return first != second && secondWalkedOn;
            }
        };

        /** @param first the first step's area, counted from the top; likewise the second's */
        abstract boolean holds(int first, int second, boolean secondWalkedOn);
    }

    boolean isBefore(StepKind kind) {
        return before.map(b -> b.contains(kind.step())).orElse(!then.contains(kind.step()));
    }

    boolean ties(StepKind first, StepKind second) {
        boolean same = where != Where.SAME_STEP_IN_LOWER_AREAS || first.step().equals(second.step());
        return same && isBefore(first) && then.contains(second.step());
    }
}
