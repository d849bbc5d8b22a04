package unthrum.reasoning.change;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import unthrum.reasoning.change.Change.Turn;
import unthrum.survey.PanelEntry;

/** Finds the smallest changes of a panel's facts that change its verdict or add or take a layer. */
public final class Changes {

    private final PanelTrial trial;
    private final PanelEntry panel;
    private final Outcome today;
    private final Sweep sweep;

    public Changes(PanelTrial trial, PanelEntry panel) {
        this.trial = trial;
        this.panel = panel;
        this.today = Outcome.of(trial.advise(panel));
        this.sweep = new Sweep(trial, trial.truths(), panel);
    }

    /** The facts that can be turned. */
    public List<Lever> levers() {
        return trial.levers(panel);
    }

    /** The smallest changes of one fact, advice first. */
    public List<Change> single() {
        return Hands.share(trial, levers(), hand -> handedTo(hand)::of).stream().flatMap(List::stream).toList();
    }

    private Changes handedTo(PanelTrial hand) {
        return hand == trial ? this : new Changes(hand, panel);
    }

    /** The changes of stated numbers within what a second measurement may find. */
    public List<Change> near() {
        List<Change> near = new ArrayList<>();
        for (Lever lever : levers()) {
            if (lever.stated() && lever.isScale()) {
                near.addAll(outward(lever, nearby(lever, true)));
                near.addAll(outward(lever, nearby(lever, false)));
            }
        }
        return near;
    }

    private static List<Object> nearby(Lever lever, boolean upward) {
        return lever.scale(upward).stream().takeWhile(v -> Measured.mayBeFound(new Turn(lever, v))).toList();
    }

    /** The smallest pairs of changes where no single one brings a layer that somebody asks for. */
    public List<Change> pairs(List<Change> single) {
        return new Pairs(trial, panel, single).find(levers());
    }

    /** The smallest changes of one fact, in both directions of a scale. */
    public List<Change> of(Lever lever) {
        List<Change> changes = new ArrayList<>();
        if (lever.isScale()) {
            changes.addAll(outward(lever, lever.scale(true)));
            changes.addAll(outward(lever, lever.scale(false)));
        } else {
            lever.words().forEach(word -> changes.addAll(outward(lever, List.of(word))));
        }
        return changes;
    }

    private List<Change> outward(Lever lever, List<Object> values) {
        List<Change> changes = new ArrayList<>();
        Set<Effect> seen = new HashSet<>();
        for (Sweep.Step step : sweep.steps(lever, values)) {
            Outcome after = Outcome.of(step.advice());
            List<Effect> fresh = Effect.between(today, after).stream().filter(seen::add).toList();
            if (!fresh.isEmpty()) {
                changes.add(new Change(List.of(new Turn(lever, step.value())), today, after, fresh,
                        step.advice().layup()));
            }
        }
        return changes;
    }
}
