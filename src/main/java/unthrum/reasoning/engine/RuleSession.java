package unthrum.reasoning.engine;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.FactHandle;
import unthrum.facts.Conclusion;
import unthrum.facts.Fact;
import unthrum.facts.Place;
import unthrum.knowledge.Knowledge;

/**
 * One vehicle before the rules. Facts go in by panel and may be replaced; conclusions follow them by themselves.
 * Not for several threads at once.
 */
public final class RuleSession implements AutoCloseable {

    private final Knowledge knowledge;
    private final KieSession session;
    private final Map<String, RuleShape> shapes;
    private final Justifications justifications;
    private final Map<String, Map<Fact, FactHandle>> handles = new HashMap<>();
    private final Map<Place, Silences> silences = new HashMap<>();

    RuleSession(Knowledge knowledge, Map<String, RuleShape> shapes) {
        this.knowledge = knowledge;
        this.session = knowledge.rules().compiled().newKieSession();
        this.shapes = shapes;
        this.justifications = new Justifications(knowledge, shapes);
        knowledge.numbers().forEach(session::insert);
    }

    /**
     * States the facts of a panel, or of the vehicle under the empty name, in place of those stated before; only what
     * differs is touched. Conclusions are up to date when this returns.
     */
    public void state(String panel, Collection<? extends Fact> facts) {
        Map<Fact, FactHandle> before = handles.getOrDefault(panel, Map.of());
        Map<Fact, FactHandle> after = new LinkedHashMap<>();
        for (Fact fact : facts) {
            FactHandle known = before.get(fact);
            after.put(fact, known != null ? known : session.insert(fact));
        }
        before.forEach((fact, handle) -> {
            if (!after.containsKey(fact)) {
                session.delete(handle);
            }
        });
        silences.clear();
        handles.put(panel, after);
        session.fireAllRules();
    }

    /** Every conclusion that the test admits, with its reasons, in a fixed order. */
    public List<Judgement> judgements(Predicate<Conclusion> wanted) {
        return justifications.read(session, wanted);
    }

    /** What is concluded on a panel and its parts. */
    public List<Judgement> judgements(String panel) {
        return judgements(c -> c.place().panel().equals(panel));
    }

    /** Why a rule stayed silent on a panel or a part of it, the nearest miss first. */
    public List<Silence> silences(String ruleName, Place place) {
        return silences.computeIfAbsent(place, p -> new Silences(new ArrayList<>(session.getObjects()), p))
                .of(knowledge.card(ruleName), shapes.get(ruleName));
    }

    @Override
    public void close() {
        session.dispose();
    }
}
