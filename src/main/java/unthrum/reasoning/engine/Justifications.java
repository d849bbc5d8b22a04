package unthrum.reasoning.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.drools.core.common.InternalFactHandle;
import org.drools.tms.LogicalDependency;
import org.drools.tms.SimpleMode;
import org.drools.tms.TruthMaintenanceSystemEqualityKey;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.FactHandle;
import org.kie.api.runtime.rule.Match;
import unthrum.facts.Conclusion;
import unthrum.facts.Fact;
import unthrum.knowledge.Knowledge;
import unthrum.reasoning.engine.Reason.Compared;

/**
 * Reads off the truth maintenance why each conclusion holds, live: what lost its reason is gone, and every rule that
 * supports a conclusion is there. The only class that knows the engine's belief structures.
 */
final class Justifications {

    private static final Comparator<Judgement> ORDER = Comparator
            .comparing((Judgement j) -> j.conclusion().place())
            .thenComparing(j -> j.conclusion().getClass().getSimpleName())
            .thenComparing(j -> j.conclusion().toString());

    private final Knowledge knowledge;
    private final Map<String, RuleShape> shapes;

    Justifications(Knowledge knowledge, Map<String, RuleShape> shapes) {
        this.knowledge = knowledge;
        this.shapes = shapes;
    }

    List<Judgement> read(KieSession session, Predicate<Conclusion> wanted) {
        List<Judgement> judgements = new ArrayList<>();
        for (FactHandle handle : session.getFactHandles()) {
            InternalFactHandle inside = (InternalFactHandle) handle;
            if (inside.getObject() instanceof Conclusion conclusion && wanted.test(conclusion)) {
                judgements.add(new Judgement(conclusion, reasons(inside)));
            }
        }
        judgements.sort(ORDER);
        return judgements;
    }

    private List<Reason> reasons(InternalFactHandle handle) {
        List<Reason> reasons = new ArrayList<>();
        Object first = ((TruthMaintenanceSystemEqualityKey) handle.getEqualityKey()).getBeliefSet().getFirst();
        for (SimpleMode belief = (SimpleMode) first; belief != null; belief = belief.getNext()) {
            LogicalDependency<?> dependency = belief.getObject();
            reasons.add(reason(dependency.getJustifier()));
        }
        reasons.sort(Comparator.comparing((Reason r) -> r.rule().id()).thenComparing(r -> r.bindings().toString()));
        return reasons.stream().distinct().toList();
    }

    private Reason reason(Match match) {
        SortedMap<String, Object> bindings = new TreeMap<>();
        Map<String, Object> all = new TreeMap<>();
        for (String id : match.getDeclarationIds()) {
            Object value = match.getDeclarationValue(id);
            all.put(RuleShape.name(id), value);
            if (!id.startsWith("GENERATED")) {
                bindings.put(RuleShape.name(id), value);
            }
        }
        RuleShape shape = shapes.get(match.getRule().getName());
        return new Reason(knowledge.card(match.getRule().getName()), bindings, compared(shape, all));
    }

    private static List<Compared> compared(RuleShape shape, Map<String, Object> bound) {
        List<Compared> compared = new ArrayList<>();
        for (RuleShape.Condition condition : shape.conditions()) {
            for (RuleShape.Test test : condition.tests()) {
                test.own().forEach(c -> add(compared, bound.get(condition.variable()), c));
                test.others().forEach(o -> add(compared, bound.get(o.variable()), o.component()));
            }
        }
        return compared.stream().distinct().toList();
    }

    private static void add(List<Compared> compared, Object owner, String component) {
        if (owner instanceof Fact fact && Components.has(fact, component)) {
            compared.add(new Compared(fact, component, Components.value(fact, component),
                    fact.assumed().contains(component)));
        }
    }
}
