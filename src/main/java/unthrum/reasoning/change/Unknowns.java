package unthrum.reasoning.change;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.change.Change.Turn;
import unthrum.survey.PanelEntry;
import unthrum.survey.Survey;

/** Finds what is worth measuring next: which unknown facts can change what a panel gets, and what hangs on each. */
public final class Unknowns {

    private final PanelTrial trial;

    public Unknowns(PanelTrial trial) {
        this.trial = trial;
    }

    /** All unknown facts of all panels, the weightiest first, then in the survey's order. */
    public List<Unknown> of(Survey survey) {
        return Hands.share(trial, survey.panels(), hand -> new Unknowns(hand)::of).stream().flatMap(List::stream)
                .sorted(Comparator.comparing(Unknown::stakes, Stakes.WEIGHTIEST)).toList();
    }

    /** The unknown facts of one panel, in the order of its facts. */
    public List<Unknown> of(PanelEntry panel) {
        List<Lever> unknown = trial.levers(panel).stream().filter(lever -> !lever.stated()).toList();
        if (unknown.isEmpty()) {
            return List.of();
        }
        PanelAdvice today = trial.advise(panel);
        Sweep sweep = new Sweep(trial, trial.truths(), panel);
        return unknown.stream().map(lever -> unknown(panel, lever, today, sweep)).toList();
    }

    private Unknown unknown(PanelEntry panel, Lever lever, PanelAdvice today, Sweep sweep) {
        List<Sweep.Step> steps = sweep.judged(lever, stated(lever)).stream().sorted(Comparator.comparingDouble(
                s -> Measured.distance(new Turn(lever, s.value())).orElse(0))).toList();
        List<Unknown.Way> ways = new ArrayList<>();
        Set<Outcome> seen = new HashSet<>(Set.of(Outcome.of(today)));
        for (Sweep.Step step : steps) {
            if (seen.add(Outcome.of(step.advice()))) {
                ways.add(new Unknown.Way(new Turn(lever, step.value()), step.advice(),
                        Effect.between(Outcome.of(today), Outcome.of(step.advice()))));
            }
        }
        List<PanelAdvice> all = new ArrayList<>(steps.stream().map(Sweep.Step::advice).toList());
        all.add(today);
        return new Unknown(panel.panel(), lever, assumed(lever, today), today, ways, Stakes.between(all));
    }

    /** Every plausible value as a statement, today's own among them: what is known is no longer assumed. */
    private static List<Object> stated(Lever lever) {
        List<Object> values = new ArrayList<>();
        if (lever.isScale()) {
            values.addAll(lever.scale(false));
            Collections.reverse(values);
            lever.today().ifPresent(values::add);
            values.addAll(lever.scale(true));
        } else {
            lever.today().filter(v -> v != unthrum.survey.Tap.NOT_TAPPED).ifPresent(values::add);
            values.addAll(lever.words());
        }
        return values;
    }

    private static Optional<unthrum.derive.Assumed> assumed(Lever lever, PanelAdvice today) {
        return Optional.ofNullable(today.panel().facts().assumptions().get(lever.key()));
    }
}
