package unthrum.reasoning.engine;

import java.util.List;
import java.util.SortedMap;
import unthrum.facts.Fact;
import unthrum.knowledge.RuleCard;

/**
 * One rule's support of a conclusion, as a value: the rule, the facts and thresholds its variables were bound to, and
 * every number or word it compared.
 *
 * @param bindings variable name, without its sign, to the fact, threshold or earlier conclusion it stood for
 * @param compared what the rule's conditions looked at, in the order of the conditions
 */
public record Reason(RuleCard rule, SortedMap<String, Object> bindings, List<Compared> compared) {

    /** A component of a fact that a condition looked at. */
    public record Compared(Fact fact, String component, Object value, boolean assumed) {
    }

    /** Whether anything that the rule looked at was assumed, not stated. */
    public boolean restsOnAssumption() {
        return compared.stream().anyMatch(Compared::assumed);
    }
}
