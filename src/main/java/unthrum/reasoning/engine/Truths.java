package unthrum.reasoning.engine;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import unthrum.facts.Fact;
import unthrum.facts.Threshold;
import unthrum.knowledge.Knowledge;
import unthrum.reasoning.engine.RuleShape.Condition;
import unthrum.reasoning.engine.RuleShape.Test;

/**
 * What every test of every rule says of a panel's facts. Where two sets of facts of the same kinds get the same
 * answers, the same rules speak on both: only numbers that a consequence computes can differ. Not for several threads
 * at once.
 */
public final class Truths {

    /** A test with what each of its variables stands for: the kind of a fact, or one threshold. */
    private record Asked(Test test, List<Object> roles, Class<?> own, List<String> raw) {
    }

    private final List<Asked> asked = new ArrayList<>();
    private final Map<Set<Class<?>>, List<Asked>> about = new HashMap<>();

    Truths(Knowledge knowledge, Map<String, RuleShape> shapes) {
        shapes.values().forEach(shape -> read(knowledge, shape));
    }

    /** The answers of all tests that look at a fact of one of the kinds, in a fixed order. */
    public List<Object> of(List<? extends Fact> facts, Set<Class<?>> kinds) {
        Map<Class<?>, List<Object>> byKind = new HashMap<>();
        for (Fact fact : facts) {
            byKind.computeIfAbsent(fact.getClass(), k -> new ArrayList<>()).add(fact);
        }
        List<Object> answers = new ArrayList<>();
        about.computeIfAbsent(kinds, this::about).forEach(one -> answer(one, byKind, answers));
        kinds.forEach(kind -> answers.add(byKind.getOrDefault(kind, List.of()).size()));
        return answers;
    }

    private List<Asked> about(Set<Class<?>> kinds) {
        return asked.stream().filter(a -> kinds.contains(a.own) || a.roles.stream().anyMatch(kinds::contains)).toList();
    }

    private void answer(Asked one, Map<Class<?>, List<Object>> byKind, List<Object> answers) {
        if (one.raw.isEmpty()) {
            tuples(one, 0, new Object[one.roles.size()], byKind, answers);
        } else {
            for (Object fact : byKind.getOrDefault(one.own, List.of())) {
                one.raw.forEach(component -> answers.add(Components.value(fact, component)));
            }
        }
    }

    private void tuples(Asked one, int role, Object[] chosen, Map<Class<?>, List<Object>> byKind, List<Object> answers) {
        if (role == chosen.length) {
            answers.add(Silences.holds(one.test, chosen));
            return;
        }
        Object stands = one.roles.get(role);
        Collection<?> candidates = stands instanceof Class<?> kind ? byKind.getOrDefault(kind, List.of())
                : List.of(stands);
        for (Object candidate : candidates) {
            chosen[role] = candidate;
            tuples(one, role + 1, chosen, byKind, answers);
        }
    }

    private void read(Knowledge knowledge, RuleShape shape) {
        Map<String, Object> roles = new LinkedHashMap<>();
        for (Condition condition : shape.conditions()) {
            roles.put(condition.variable(), condition.type() == Threshold.class ? threshold(knowledge, condition)
                    : condition.type());
        }
        for (Condition condition : shape.conditions()) {
            if (condition.type() != Threshold.class) {
                condition.tests().forEach(test -> read(test, condition, roles));
            }
        }
    }

    /** A test that also looks at a conclusion has no answer of its own: what it reads of facts stands for it. */
    private void read(Test test, Condition condition, Map<String, Object> roles) {
        List<Object> mine = test.variables().stream().map(roles::get).toList();
        if (mine.stream().allMatch(role -> role instanceof Threshold || role instanceof Class<?> kind && isFact(kind))) {
            asked.add(new Asked(test, mine, condition.type(), List.of()));
            return;
        }
        if (isFact(condition.type())) {
            raw(test, condition.type(), test.own());
        }
        Map<Class<?>, Set<String>> others = test.others().stream()
                .filter(o -> roles.get(o.variable()) instanceof Class<?> kind && isFact(kind))
                .collect(Collectors.groupingBy(o -> (Class<?>) roles.get(o.variable()),
                        Collectors.mapping(RuleShape.Reference::component, Collectors.toSet())));
        others.forEach((kind, components) -> raw(test, kind, components));
    }

    private void raw(Test test, Class<?> kind, Set<String> components) {
        List<String> read = components.stream().filter(c -> Components.has(kind, c)).sorted().toList();
        if (!read.isEmpty()) {
            asked.add(new Asked(test, List.of(), kind, read));
        }
    }

    private static boolean isFact(Class<?> kind) {
        return Fact.class.isAssignableFrom(kind);
    }

    private static Threshold threshold(Knowledge knowledge, Condition condition) {
        return knowledge.numbers().stream()
                .filter(t -> condition.tests().stream().allMatch(test -> Silences.holds(test, new Object[] {t})))
                .findFirst().orElseThrow();
    }
}
