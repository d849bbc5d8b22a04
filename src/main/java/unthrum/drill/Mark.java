package unthrum.drill;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import unthrum.knowledge.RuleCard;
import unthrum.material.Layer;
import unthrum.reasoning.Verdict;
import unthrum.reasoning.change.Outcome;
import unthrum.reasoning.change.Spot;
import unthrum.reasoning.change.WhyNot;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.Reason;

/**
 * An answer held against the case.
 *
 * @param missed    what the panel gets and the answer does not give
 * @param beside    what the answer gives and the panel does not get
 * @param untrue    the reasons named that do not hold on this panel
 * @param unsaid    the grounds for which no reason was named
 */
public record Mark(Exercise exercise, Answer answer, Result result, SortedSet<Spot> missed, SortedSet<Spot> beside,
                   List<Choice.Untrue> untrue, List<Ground> unsaid) {

    public static Mark of(Exercise exercise, Answer answer) {
        Outcome own = exercise.outcome();
        SortedSet<Spot> missed = without(own.spots(), answer.outcome().spots());
        SortedSet<Spot> beside = without(answer.outcome().spots(), own.spots());
        List<Choice> chosen = exercise.chosen(answer);
        List<Choice.Untrue> untrue = chosen.stream().filter(Choice.Untrue.class::isInstance)
                .map(Choice.Untrue.class::cast).toList();
        Set<RuleCard> named = chosen.stream().map(Choice::rule).collect(Collectors.toSet());
        List<Ground> unsaid = exercise.grounds().stream().filter(g -> !g.isSaidBy(named)).toList();
        Result result = !answer.outcome().equals(own) ? Result.WRONG
                : untrue.isEmpty() && unsaid.isEmpty() ? Result.RIGHT : Result.WRONG_REASON;
        return new Mark(exercise, answer, result, missed, beside, untrue, unsaid);
    }

    private static SortedSet<Spot> without(SortedSet<Spot> all, SortedSet<Spot> some) {
        SortedSet<Spot> rest = new TreeSet<>(all);
        rest.removeAll(some);
        return rest;
    }

    /** Whether the panel waits or is to be measured first, or not, other than the answer says. */
    public boolean verdictDiffers() {
        return !answer.outcome().verdict().equals(exercise.outcome().verdict());
    }

    /** How each subject did: those that the panel practises, and those of the rules that the answer got wrong. */
    public SortedMap<String, Result> bySubject() {
        SortedMap<String, Result> results = new TreeMap<>();
        exercise.subjects().forEach(subject -> results.put(subject, Result.RIGHT));
        Stream<RuleCard> reasons = Stream.concat(untrue.stream().map(Choice::rule),
                unsaid.stream().flatMap(this::offered));
        reasons.forEach(rule -> results.merge(rule.subject(), Result.WRONG_REASON, Mark::worse));
        mistaken().forEach(rule -> results.merge(rule.subject(), Result.WRONG, Mark::worse));
        return results;
    }

    /** The rules that decide what the answer got wrong; where the panel waits, nothing else counts. */
    private Stream<RuleCard> mistaken() {
        Stream<Ground> grounds = missed.stream().flatMap(spot -> ground(Optional.of(spot.layer())));
        if (verdictDiffers()) {
            grounds = Stream.concat(grounds, ground(Optional.empty()));
        }
        Stream<Spot> laid = exercise.outcome().verdict() == Verdict.HOLD ? Stream.empty() : beside.stream();
        return Stream.concat(grounds.flatMap(this::offered),
                laid.flatMap(spot -> against(spot).stream()));
    }

    /** The rules that keep a layer away from a place; where there are none, the rule that comes nearest to asking. */
    public List<RuleCard> against(Spot spot) {
        List<RuleCard> vetoes = exercise.against(spot).stream().map(Reason::rule).distinct().toList();
        return !vetoes.isEmpty() ? vetoes : exercise.whyNot(spot).map(Mark::rules).orElse(List.of());
    }

    private static Result worse(Result a, Result b) {
        return a.compareTo(b) >= 0 ? a : b;
    }

    private Stream<Ground> ground(Optional<Layer> layer) {
        return exercise.grounds().stream().filter(g -> g.layer().equals(layer));
    }

    private Stream<RuleCard> offered(Ground ground) {
        return exercise.holding().filter(rule -> ground.isSaidBy(Set.of(rule)));
    }

    private static List<RuleCard> rules(WhyNot why) {
        if (why instanceof WhyNot.NobodyAsks none) {
            return none.silent().stream().limit(1).map(s -> s.rule()).toList();
        }
        if (why instanceof WhyNot.Outvoted outvoted) {
            return rules(outvoted.want().vetoes().stream());
        }
        if (why instanceof WhyNot.Waits waits) {
            return rules(waits.holds().stream());
        }
        if (why instanceof WhyNot.Rejected rejected) {
            return rules(rejected.nearest().rejectedBy().stream());
        }
        return why instanceof WhyNot.Alone alone ? rules(alone.broken().stream()) : List.of();
    }

    private static List<RuleCard> rules(Stream<Judgement> judgements) {
        return judgements.flatMap(j -> j.reasons().stream()).map(Reason::rule).distinct().toList();
    }
}
