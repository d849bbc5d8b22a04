package unthrum.reasoning.engine;

import java.util.HashMap;
import java.util.Map;
import org.kie.api.definition.rule.Rule;
import unthrum.knowledge.Knowledge;

/** The rules ready to judge: opens a session for each vehicle. May be shared between threads. */
public final class RuleEngine {

    private final Knowledge knowledge;
    private final Map<String, RuleShape> shapes = new HashMap<>();

    public RuleEngine(Knowledge knowledge) {
        this.knowledge = knowledge;
        knowledge.rules().compiled().getKiePackages().stream().flatMap(p -> p.getRules().stream())
                .forEach((Rule rule) -> shapes.put(rule.getName(), RuleShape.of(rule)));
    }

    public Knowledge knowledge() {
        return knowledge;
    }

    /** What the tests of all rules say of facts, without a session. */
    public Truths truths() {
        return new Truths(knowledge, shapes);
    }

    /** A session that knows the thresholds and nothing else yet. */
    public RuleSession open() {
        return new RuleSession(knowledge, shapes);
    }
}
