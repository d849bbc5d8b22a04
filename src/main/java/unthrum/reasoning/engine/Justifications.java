package unthrum.reasoning.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
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
 * supports a conclusion is there. Facts are put in and taken out but never altered in place, so a match says the same
 * as long as it lives, and what was read of a conclusion that still stands on the same matches is kept. The only class
 * that knows the engine's belief structures.
 */
final class Justifications {

    private static final Comparator<Read> ORDER = Comparator
            .comparing((Read r) -> r.judgement.conclusion().place())
            .thenComparing(Read::kind).thenComparing(Read::text);

    private final Knowledge knowledge;
    private final Map<String, RuleShape> shapes;
    private Map<FactHandle, Read> kept = new IdentityHashMap<>();

    /** A conclusion as it was read, and the matches that it stood on. */
    private record Read(Judgement judgement, List<Match> matches, String kind, String text) {

        boolean standsOn(List<Match> others) {
            if (matches.size() != others.size()) {
                return false;
            }
            for (int i = 0; i < others.size(); i++) {
                if (matches.get(i) != others.get(i)) {
                    return false;
                }
            }
            return true;
        }
    }

    Justifications(Knowledge knowledge, Map<String, RuleShape> shapes) {
        this.knowledge = knowledge;
        this.shapes = shapes;
    }

    List<Judgement> read(KieSession session, Predicate<Conclusion> wanted) {
        Map<FactHandle, Read> living = new IdentityHashMap<>();
        List<Read> found = new ArrayList<>();
        for (FactHandle handle : session.getFactHandles()) {
            InternalFactHandle inside = (InternalFactHandle) handle;
            if (inside.getObject() instanceof Conclusion conclusion) {
                Read read = read(inside, conclusion);
                living.put(handle, read);
                if (wanted.test(conclusion)) {
                    found.add(read);
                }
            }
        }
        kept = living;
        found.sort(ORDER);
        return found.stream().map(Read::judgement).toList();
    }

    private Read read(InternalFactHandle handle, Conclusion conclusion) {
        List<Match> matches = matches(handle);
        Read known = kept.get(handle);
        return known != null && known.standsOn(matches) ? known
                : new Read(new Judgement(conclusion, reasons(matches)), matches,
                        conclusion.getClass().getSimpleName(), conclusion.toString());
    }

    private static List<Match> matches(InternalFactHandle handle) {
        List<Match> matches = new ArrayList<>();
        Object first = ((TruthMaintenanceSystemEqualityKey) handle.getEqualityKey()).getBeliefSet().getFirst();
        for (SimpleMode belief = (SimpleMode) first; belief != null; belief = belief.getNext()) {
            LogicalDependency<?> dependency = belief.getObject();
            matches.add(dependency.getJustifier());
        }
        return matches;
    }

    private List<Reason> reasons(List<Match> matches) {
        return matches.stream().map(this::reason)
                .sorted(Comparator.comparing((Reason r) -> r.rule().id()).thenComparing(r -> r.bindings().toString()))
                .distinct().toList();
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
