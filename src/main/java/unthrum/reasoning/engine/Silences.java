package unthrum.reasoning.engine;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import unthrum.facts.Conclusion;
import unthrum.facts.Fact;
import unthrum.facts.Place;
import unthrum.facts.Threshold;
import unthrum.knowledge.RuleCard;
import unthrum.reasoning.engine.RuleShape.Condition;
import unthrum.reasoning.engine.RuleShape.Sense;
import unthrum.reasoning.engine.RuleShape.Test;
import unthrum.reasoning.engine.Silence.Looked;
import unthrum.reasoning.engine.Silence.Outcome;
import unthrum.reasoning.engine.Silence.Value;

/**
 * Evaluates the compiled tests of a silent rule, one by one, against the facts of a live session. The tests are the
 * very predicates that the engine uses, so the trace and the engine cannot disagree.
 */
final class Silences {

    private final Collection<?> objects;
    private final Place place;
    private final Map<Class<?>, List<?>> candidates = new HashMap<>();

    /**
     * @param objects all facts and conclusions of the session
     * @param place   a panel, or a part of it: then only that one of all parts of its kind is looked at
     */
    Silences(Collection<?> objects, Place place) {
        this.objects = objects;
        this.place = place;
    }

    /** One trace for each fact that the rule could have spoken about, the nearest miss first. */
    List<Silence> of(RuleCard rule, RuleShape shape) {
        Optional<Condition> anchor = shape.conditions().stream()
                .filter(c -> c.sense() == Sense.ONE && c.type() != Threshold.class).findFirst();
        List<?> abouts = anchor.map(c -> candidates(c.type())).orElse(List.of());
        List<Silence> traces = new ArrayList<>();
        if (abouts.isEmpty()) {
            traces.add(trace(rule, shape, Optional.empty(), null));
        }
        for (Object about : abouts) {
            traces.add(trace(rule, shape, Optional.of(about), anchor.orElseThrow()));
        }
        traces.sort(Comparator.comparingLong(Silence::failures));
        return traces;
    }

    private Silence trace(RuleCard rule, RuleShape shape, Optional<Object> about, Condition anchor) {
        Map<Condition, List<?>> some = new LinkedHashMap<>();
        for (Condition condition : shape.conditions()) {
            some.put(condition, condition == anchor ? List.of(about.orElseThrow()) : candidates(condition));
        }
        return new Silence(rule, about, nearest(shape.conditions(), some, new HashMap<>()));
    }

    /** Of all ways to choose a fact for each condition the one with the fewest failures, among equals the first. */
    private List<Looked> nearest(List<Condition> conditions, Map<Condition, List<?>> candidates,
                                 Map<String, Object> bound) {
        if (conditions.isEmpty()) {
            return List.of();
        }
        Condition condition = conditions.get(0);
        List<Condition> rest = conditions.subList(1, conditions.size());
        if (condition.sense() != Sense.ONE || candidates.get(condition).isEmpty()) {
            bound.remove(condition.variable());
            return joined(look(condition, candidates.get(condition), bound), nearest(rest, candidates, bound));
        }
        List<Looked> best = null;
        for (Object candidate : candidates.get(condition)) {
            bound.put(condition.variable(), candidate);
            List<Looked> tried = tests(condition, candidate, bound);
            if (best == null || failures(tried) < failures(best)) {
                tried = joined(tried, nearest(rest, candidates, bound));
                best = best == null || failures(tried) < failures(best) ? tried : best;
            }
        }
        return best;
    }

    private static List<Looked> joined(List<Looked> first, List<Looked> second) {
        List<Looked> all = new ArrayList<>(first);
        all.addAll(second);
        return all;
    }

    /** A condition that names no fact: none may meet it, or any one must. */
    private List<Looked> look(Condition condition, List<?> candidates, Map<String, Object> bound) {
        List<Looked> best = null;
        Object chosen = null;
        for (Object candidate : candidates) {
            Map<String, Object> with = new HashMap<>(bound);
            with.put(condition.variable(), candidate);
            List<Looked> tried = tests(condition, candidate, with);
            if (best == null || failures(tried) < failures(best)) {
                best = tried;
                chosen = candidate;
            }
        }
        String kind = condition.type().getSimpleName();
        boolean met = best != null && failures(best) == 0;
        if (condition.sense() == Sense.NONE) {
            return List.of(new Looked(kind, text(condition), met ? Outcome.FAILED : Outcome.HELD,
                    met ? Optional.of(chosen) : Optional.empty(), List.of(), false, OptionalDouble.empty()));
        }
        return best != null ? best : List.of(new Looked(kind, text(condition), Outcome.NOTHING_TO_LOOK_AT,
                Optional.empty(), List.of(), false, OptionalDouble.empty()));
    }

    private static String text(Condition condition) {
        return String.join(", ", condition.tests().stream().map(Test::text).toList());
    }

    private List<Looked> tests(Condition condition, Object candidate, Map<String, Object> bound) {
        List<Looked> looked = new ArrayList<>();
        String kind = condition.type().getSimpleName();
        for (Test test : condition.tests()) {
            List<Value> values = values(test, candidate, bound);
            boolean known = test.variables().stream().allMatch(v -> bound.get(v) != null);
            Outcome outcome = !known ? Outcome.NOTHING_TO_LOOK_AT
                    : holds(test, bound) ? Outcome.HELD : Outcome.FAILED;
            looked.add(new Looked(kind, test.text(), outcome, Optional.of(candidate), values,
                    values.stream().anyMatch(Silences::assumed), margin(values)));
        }
        if (looked.isEmpty()) {
            looked.add(new Looked(kind, "", Outcome.HELD, Optional.of(candidate), List.of(), false,
                    OptionalDouble.empty()));
        }
        return looked;
    }

    private static boolean holds(Test test, Map<String, Object> bound) {
        return holds(test, test.variables().stream().map(bound::get).toArray());
    }

    /** The test's own answer, its variables in its own order. */
    static boolean holds(Test test, Object[] arguments) {
        try {
            return test.predicate().getPredicate().test(arguments);
        } catch (Exception e) {
            throw new IllegalStateException("cannot evaluate '" + test.text() + "'", e);
        }
    }

    private static List<Value> values(Test test, Object candidate, Map<String, Object> bound) {
        List<Value> values = new ArrayList<>();
        for (String component : test.own()) {
            if (Components.has(candidate, component)) {
                values.add(new Value(candidate, component, Components.value(candidate, component)));
            }
        }
        for (RuleShape.Reference reference : test.others()) {
            Object owner = bound.get(reference.variable());
            if (owner != null && Components.has(owner, reference.component())) {
                values.add(new Value(owner, reference.component(), Components.value(owner, reference.component())));
            }
        }
        return values;
    }

    private static boolean assumed(Value value) {
        return value.owner() instanceof Fact fact && fact.assumed().contains(value.component());
    }

    private static OptionalDouble margin(List<Value> values) {
        return values.size() == 2 && values.get(0).value() instanceof Double mine
                && values.get(1).value() instanceof Double theirs
                ? OptionalDouble.of(mine - theirs) : OptionalDouble.empty();
    }

    private static long failures(List<Looked> looked) {
        return looked.stream().filter(l -> l.outcome() != Outcome.HELD).count();
    }

    /** A threshold is named by its id, so only one comes into question. */
    private List<?> candidates(Condition condition) {
        List<?> all = candidates(condition.type());
        return condition.type() != Threshold.class ? all : all.stream()
                .filter(t -> failures(tests(condition, t, Map.of(condition.variable(), t))) == 0).toList();
    }

    private List<?> candidates(Class<?> type) {
        return candidates.computeIfAbsent(type, this::found);
    }

    private List<?> found(Class<?> type) {
        List<?> near = objects.stream().filter(type::isInstance).filter(this::isNear)
                .sorted(Comparator.comparing(Silences::name)).toList();
        List<?> here = place.isWholePanel() ? List.of() : near.stream().filter(o -> place.equals(placeOf(o))).toList();
        return here.isEmpty() ? near : here;
    }

    private static String name(Object object) {
        return object instanceof Threshold threshold ? threshold.id() : object.toString();
    }

    private boolean isNear(Object object) {
        Place its = placeOf(object);
        return its == null || its.isVehicle() || its.panel().equals(place.panel());
    }

    private static Place placeOf(Object object) {
        if (object instanceof Conclusion conclusion) {
            return conclusion.place();
        }
        return object instanceof Fact fact ? fact.place() : null;
    }
}
