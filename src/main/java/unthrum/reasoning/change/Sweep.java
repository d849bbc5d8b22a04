package unthrum.reasoning.change;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import unthrum.facts.Bay;
import unthrum.facts.Fact;
import unthrum.facts.Sun;
import unthrum.reading.Quantity;
import unthrum.reasoning.Advisor;
import unthrum.reasoning.PanelAdvice;
import unthrum.derive.PanelFacts;
import unthrum.reasoning.engine.Truths;
import unthrum.survey.PanelEntry;

/**
 * Walks one fact away from today's value and finds every point at which the panel gets something else.
 *
 * <p>Every point is looked at, but not every one is judged in full. On a run of points where every test of every rule
 * gives the same answers, the same rules speak; only the values of limits move, all one way, since a consequence is a
 * sum, difference or product of one component and a threshold after it, and a turned fact moves one such component at a
 * time (tests of the rule files and of the facts hold both). The layups that they admit are then nested, and so are the
 * materials that only an assumption keeps out, so a run whose two ends get the same layup and verdict gets them
 * everywhere; otherwise the run is halved.
 *
 * <p>Where what a layup brings moves with the fact too, a run is halved down to what two honest measurements may lie
 * apart, or to a share of the whole way: what comes and goes again within that is not told.
 */
final class Sweep {

    /** No way is parted finer than this where only gains move along it. Our own choice, from memory. */
    private static final int MOST_PARTS = 24;

    /** A value with the advice on the panel that has it. */
    record Step(Object value, PanelAdvice advice) {
    }

    private final PanelTrial trial;
    private final Truths truths;
    private final PanelEntry panel;
    private final Set<Fact> known;
    private final List<Object> weighed;

    Sweep(PanelTrial trial, Truths truths, PanelEntry panel) {
        this.trial = trial;
        this.truths = truths;
        this.panel = panel;
        PanelFacts today = trial.facts(panel);
        this.known = new HashSet<>(today.facts());
        this.weighed = trial.advisor().weighs(today);
    }

    /** Where the outcome changes, the nearest to today first; words in their own order, each a step of its own. */
    List<Step> steps(Lever lever, List<Object> values) {
        if (!lever.isScale()) {
            return judged(lever, values);
        }
        List<Step> steps = new ArrayList<>();
        Outcome last = Outcome.of(trial.advise(panel));
        for (Step step : judged(lever, values)) {
            Outcome here = Outcome.of(step.advice());
            if (!here.equals(last)) {
                steps.add(step);
                last = here;
            }
        }
        return steps;
    }

    /**
     * Every point that was judged in full, in the order of the values: no outcome and no set of rules that speak is
     * missing among them.
     */
    List<Step> judged(Lever lever, List<Object> values) {
        if (values.isEmpty()) {
            return List.of();
        }
        return lever.isScale() ? runs(lever, values)
                : values.stream().map(v -> new Step(v, trial.advise(lever.set(panel, v)))).toList();
    }

    private List<Step> runs(Lever lever, List<Object> values) {
        List<Step> found = new ArrayList<>();
        int start = 0;
        boolean moves = false;
        Footing footing = footing(lever.set(panel, values.get(0)));
        for (int i = 1; i <= values.size(); i++) {
            Footing next = i < values.size() ? footing(lever.set(panel, values.get(i))) : null;
            if (next != null && next.rules.equals(footing.rules)) {
                moves |= !next.weighed.equals(footing.weighed);
            } else {
                Step first = judged(lever, values, start);
                found.add(first);
                Step end = judged(lever, values, i - 1);
                between(lever, values, start, first, i - 1, end, moves ? grain(lever, values.size()) : i, found);
                found.add(end);
                start = i;
                moves = false;
            }
            footing = next;
        }
        return found;
    }

    /** So many steps that nobody could tell finer. */
    static int grain(Lever lever, int steps) {
        double errs = lever.how().errs().map(Quantity::si).orElse(0.0) / lever.how().step().orElseThrow().si();
        return (int) Math.max(Math.round(errs), steps / MOST_PARTS);
    }

    /** @param grain two ends no further apart that get the same have the same between them */
    private void between(Lever lever, List<Object> values, int from, Step first, int to, Step last, int grain,
                         List<Step> found) {
        if (to - from < 2 || to - from <= grain && first.advice().layup().equals(last.advice().layup())
                && first.advice().verdict() == last.advice().verdict()) {
            return;
        }
        int middle = (from + to) / 2;
        Step half = judged(lever, values, middle);
        between(lever, values, from, first, middle, half, grain, found);
        found.add(half);
        between(lever, values, middle, half, to, last, grain, found);
    }

    private Step judged(Lever lever, List<Object> values, int index) {
        return new Step(values.get(index), trial.advise(lever.set(panel, values.get(index))));
    }

    /** All that decides which rules speak, and what the choice of a layup reads beside the rules. */
    private record Footing(List<Object> rules, List<Object> weighed) {
    }

    private Footing footing(PanelEntry changed) {
        PanelFacts facts = trial.facts(changed);
        Set<Class<?>> kinds = turned(facts.facts());
        List<Object> weighs = Collections.disjoint(kinds, Advisor.WEIGHED) ? weighed : trial.advisor().weighs(facts);
        List<Fact> all = new ArrayList<>(trial.vehicle());
        all.addAll(facts.facts());
        return new Footing(List.of(kinds, truths.of(all, kinds), computed(facts)), weighs);
    }

    /** What limits are computed from and hangs on several facts at once: where it moves, every point is judged. */
    private static List<Double> computed(PanelFacts facts) {
        return Stream.concat(facts.all(Bay.class).map(Bay::enoughCover), facts.all(Sun.class).map(Sun::metal)).toList();
    }

    /** The kinds of which there is a fact more or less than today. */
    private Set<Class<?>> turned(List<Fact> here) {
        Set<Class<?>> kinds = new HashSet<>();
        Set<Fact> left = Collections.newSetFromMap(new IdentityHashMap<>());
        left.addAll(known);
        here.stream().filter(f -> !left.remove(f) && !known.contains(f)).forEach(f -> kinds.add(f.getClass()));
        left.stream().filter(f -> !here.contains(f)).forEach(f -> kinds.add(f.getClass()));
        return kinds;
    }
}
