package unthrum.drill;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import unthrum.facts.Bay;
import unthrum.facts.Opening;
import unthrum.facts.Veto;
import unthrum.knowledge.Knowledge;
import unthrum.knowledge.RuleCard;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.change.Outcome;
import unthrum.reasoning.change.PanelTrial;
import unthrum.reasoning.change.Spot;
import unthrum.reasoning.change.WhyNot;
import unthrum.reasoning.change.WhyNots;
import unthrum.reasoning.engine.Reason;
import unthrum.survey.PanelEntry;
import unthrum.survey.Survey;

/**
 * A panel to be judged, with its case.
 *
 * @param grounds what must be said of it
 * @param choices the reasons offered, in the order of their numbers
 * @param whyNots why it does not get what it does not get
 */
public record Exercise(Survey survey, PanelEntry panel, PanelAdvice advice, List<Ground> grounds, List<Choice> choices,
                       List<WhyNot> whyNots) {

    /** @param seed the same seed, the same reasons in the same order */
    static Exercise of(PanelTrial trial, Survey survey, PanelEntry panel, Knowledge knowledge, long seed) {
        PanelAdvice advice = trial.advise(panel);
        List<Ground> grounds = Ground.of(advice);
        return new Exercise(survey, panel, advice, grounds,
                Choices.of(advice, grounds, trial, knowledge.cards(), new Random(seed)),
                new WhyNots(trial, advice).all());
    }

    public Outcome outcome() {
        return Outcome.of(advice);
    }

    public List<Bay> bays() {
        return advice.panel().facts().all(Bay.class).toList();
    }

    public List<Opening> openings() {
        return advice.panel().facts().all(Opening.class).toList();
    }

    /** Why it does not get that. */
    public Optional<WhyNot> whyNot(Spot spot) {
        return whyNots.stream().filter(w -> w.layer() == spot.layer() && w.place().equals(spot.place())).findFirst();
    }

    /** The reasons why that must not be there, whether anything asks for it or not. */
    public List<Reason> against(Spot spot) {
        return advice.panel().all(Veto.class).stream().filter(j -> {
            Veto veto = (Veto) j.conclusion();
            return spot.layer().matches(veto.layer()) && spot.place().within(veto.place());
        }).flatMap(j -> j.reasons().stream()).toList();
    }

    /** The subjects that it practises: those of the reasons offered that hold. */
    public SortedSet<String> subjects() {
        SortedSet<String> subjects = new TreeSet<>();
        holding().forEach(rule -> subjects.add(rule.subject()));
        return subjects;
    }

    /** The answer that the case itself gives: its outcome, and for each ground the first reason offered. */
    public Answer ownAnswer() {
        SortedSet<Integer> why = new TreeSet<>();
        for (Ground ground : grounds) {
            Set<RuleCard> rules = new HashSet<>(holding().toList());
            rules.retainAll(ground.reasons().stream().map(r -> r.rule()).toList());
            choices.stream().filter(c -> rules.contains(c.rule())).findFirst().ifPresent(c -> why.add(number(c)));
        }
        return new Answer(outcome(), why);
    }

    /** The number by which a reason is chosen. */
    public int number(Choice choice) {
        return choices.indexOf(choice) + 1;
    }

    /** The reasons chosen. */
    List<Choice> chosen(Answer answer) {
        List<Choice> chosen = new ArrayList<>();
        answer.why().forEach(n -> chosen.add(choices.get(n - 1)));
        return chosen;
    }

    /** The rules among the reasons offered that hold. */
    public Stream<RuleCard> holding() {
        return choices.stream().filter(Choice.True.class::isInstance).map(Choice::rule);
    }
}
