package unthrum.reasoning.engine;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import unthrum.knowledge.RuleCard;

/**
 * Why a rule did not speak on a panel: each of its conditions against the facts that come nearest to meeting it.
 *
 * @param about the fact the rule would have spoken about, such as one bay; absent when there is none of the kind
 */
public record Silence(RuleCard rule, Optional<Object> about, List<Looked> conditions) {

    /** What became of one condition. */
    public enum Outcome { HELD, FAILED, NOTHING_TO_LOOK_AT }

    /**
     * One test of one condition.
     *
     * @param text    the test as the rule states it; empty when the condition names only a kind of fact
     * @param found   the fact looked at
     * @param values  each component looked at with its value
     * @param assumed whether one of them was assumed: an unknown, whatever the outcome
     * @param margin  for two numbers, how far the fact's is above what it was compared with, in SI
     */
    public record Looked(String kind, String text, Outcome outcome, Optional<Object> found, List<Value> values,
                         boolean assumed, OptionalDouble margin) {
    }

    /** A component of a fact or threshold with its value. */
    public record Value(Object owner, String component, Object value) {
    }

    public long failures() {
        return conditions.stream().filter(l -> l.outcome() != Outcome.HELD).count();
    }
}
