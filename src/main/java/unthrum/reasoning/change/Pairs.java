package unthrum.reasoning.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import unthrum.facts.Conclusion;
import unthrum.facts.Hold;
import unthrum.facts.Limit;
import unthrum.facts.Pairing;
import unthrum.facts.Veto;
import unthrum.material.Layer;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.Verdict;
import unthrum.reasoning.change.Change.Turn;
import unthrum.reasoning.engine.Judgement;
import unthrum.survey.PanelEntry;

/**
 * Two changes together where no single one brings a layer that somebody asks for. Only turns that a fitter can make,
 * and that by themselves take away something which stands against the layer, are put together; no more than a set
 * number of pairs is tried.
 */
final class Pairs {

    /** So many pairs are tried on a panel: it keeps the answer within the time that advice takes. */
    private static final int MOST = 60;

    private final PanelTrial trial;
    private final PanelEntry panel;
    private final PanelAdvice today;
    private final Set<Spot> reached;
    private int tried;

    /** @param single the changes of one fact that were found */
    Pairs(PanelTrial trial, PanelEntry panel, List<Change> single) {
        this.trial = trial;
        this.panel = panel;
        this.today = trial.advise(panel);
        this.reached = single.stream().flatMap(c -> c.after().spots().stream()).collect(Collectors.toSet());
        this.reached.addAll(Outcome.of(today).spots());
    }

    List<Change> find(List<Lever> levers) {
        List<Turn> turns = turns(levers);
        List<Change> found = new ArrayList<>();
        for (Spot wanted : missing()) {
            if (found.stream().noneMatch(pair -> pair.after().spots().contains(wanted))) {
                best(wanted, turns).ifPresent(found::add);
            }
        }
        return found;
    }

    /** The layers that somebody asks for and that no single change brings. */
    private List<Spot> missing() {
        return today.wants().stream().filter(w -> w.layer() != Layer.SEAL)
                .map(w -> new Spot(w.layer(), w.place())).filter(s -> !reached.contains(s)).sorted().toList();
    }

    /** One value for each fact that a fitter can change: each word, and the end of a scale that helps. */
    private static List<Turn> turns(List<Lever> levers) {
        List<Turn> turns = new ArrayList<>();
        for (Lever lever : levers) {
            if (lever.isScale()) {
                for (boolean upward : List.of(true, false)) {
                    List<Object> values = lever.scale(upward);
                    if (!values.isEmpty()) {
                        turns.add(new Turn(lever, values.get(values.size() - 1)));
                    }
                }
            } else {
                lever.words().forEach(word -> turns.add(new Turn(lever, word)));
            }
        }
        turns.removeIf(turn -> !turn.canBeMade());
        return turns;
    }

    private Optional<Change> best(Spot wanted, List<Turn> turns) {
        Set<Conclusion> against = against(wanted, today);
        List<Turn> helpful = turns.stream()
                .filter(t -> helps(against, against(wanted, trial.advise(Edits.apply(panel, List.of(t)))))).toList();
        for (int i = 0; i < helpful.size(); i++) {
            for (int j = i + 1; j < helpful.size() && tried < MOST; j++) {
                Turn a = helpful.get(i);
                Turn b = helpful.get(j);
                if (!a.lever().name().equals(b.lever().name()) && brings(wanted, List.of(a, b))) {
                    return Optional.of(smallest(wanted, a, b));
                }
            }
        }
        return Optional.empty();
    }

    private boolean brings(Spot wanted, List<Turn> pair) {
        tried++;
        return Outcome.of(trial.advise(Edits.apply(panel, pair))).spots().contains(wanted);
    }

    /** Each of the two brought back as near to today as the other, as it stands, allows. */
    private Change smallest(Spot wanted, Turn a, Turn b) {
        Turn first = nearest(wanted, a, b);
        Turn second = nearest(wanted, b, first);
        List<Turn> both = List.of(first, second);
        Outcome before = Outcome.of(today);
        PanelAdvice changed = trial.advise(Edits.apply(panel, both));
        Outcome after = Outcome.of(changed);
        return new Change(both, before, after, Effect.between(before, after), changed.layup());
    }

    private Turn nearest(Spot wanted, Turn moved, Turn fixed) {
        if (!moved.lever().isScale()) {
            return moved;
        }
        PanelEntry other = Edits.apply(panel, List.of(fixed));
        boolean upward = Measured.upward(moved);
        return new Sweep(trial, trial.truths(), other).judged(moved.lever(), moved.lever().scale(upward)).stream()
                .filter(s -> Outcome.of(s.advice()).spots().contains(wanted))
                .min(Comparator.comparingDouble(s -> Measured.distance(new Turn(moved.lever(), s.value())).orElse(0)))
                .map(s -> new Turn(moved.lever(), s.value())).orElse(moved);
    }

    /** Something that stood against the layer is gone. */
    private static boolean helps(Set<Conclusion> before, Set<Conclusion> after) {
        return !after.containsAll(before);
    }

    /** All conclusions that keep a layer off. */
    private static Set<Conclusion> against(Spot wanted, PanelAdvice advice) {
        Set<Conclusion> against = new HashSet<>();
        for (Judgement judgement : advice.panel().judgements()) {
            Conclusion c = judgement.conclusion();
            boolean keeps = c instanceof Veto veto && wanted.layer().matches(veto.layer())
                    || c instanceof Limit limit && wanted.layer().matches(limit.layer())
                    || c instanceof Pairing pairing && pairing.layer() == wanted.layer()
                    || c instanceof Hold && advice.verdict() == Verdict.HOLD;
            if (keeps) {
                against.add(c);
            }
        }
        return against;
    }
}
