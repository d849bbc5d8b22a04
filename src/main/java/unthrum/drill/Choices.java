package unthrum.drill;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import unthrum.facts.Place;
import unthrum.knowledge.Pattern;
import unthrum.knowledge.RuleCard;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.Verdict;
import unthrum.reasoning.change.PanelTrial;
import unthrum.reasoning.engine.Reason;
import unthrum.reasoning.engine.Silence;

/**
 * Picks the reasons that an apprentice is offered: some for each ground, one that holds besides, and rules that do not
 * speak on the panel, those first of which at least half holds. The same random numbers, the same list.
 */
final class Choices {

    /** So many reasons fit the eye at once. */
    private static final int USUAL = 8;
    private static final int TRUE_PER_GROUND = 2;
    private static final int LEAST_UNTRUE = 3;

    private final PanelAdvice advice;
    private final Random random;

    private Choices(PanelAdvice advice, Random random) {
        this.advice = advice;
        this.random = random;
    }

    static List<Choice> of(PanelAdvice advice, List<Ground> grounds, PanelTrial trial, Collection<RuleCard> cards,
                           Random random) {
        Choices choices = new Choices(advice, random);
        List<Choice> all = new ArrayList<>(choices.holding(grounds));
        int untrue = Math.max(LEAST_UNTRUE, USUAL - all.size());
        all.addAll(choices.silent(trial, cards).subList(0, untrue));
        Collections.shuffle(all, random);
        return List.copyOf(all);
    }

    private List<Choice> holding(List<Ground> grounds) {
        Map<RuleCard, Choice> picked = new LinkedHashMap<>();
        grounds.forEach(ground -> pick(ground.reasons(), TRUE_PER_GROUND, picked));
        if (advice.verdict() != Verdict.HOLD) {
            pick(Ground.against(advice), 1, picked);
        }
        return List.copyOf(picked.values());
    }

    /** Rules of subjects that are not there yet come first. */
    private void pick(List<Reason> reasons, int most, Map<RuleCard, Choice> picked) {
        List<Reason> left = shuffled(reasons);
        for (int i = 0; i < most && !left.isEmpty(); i++) {
            Set<String> there = new HashSet<>();
            picked.keySet().forEach(rule -> there.add(rule.subject()));
            Reason next = left.stream().filter(r -> !there.contains(r.rule().subject())).findFirst()
                    .orElse(left.get(0));
            picked.putIfAbsent(next.rule(), new Choice.True(next));
            left.remove(next);
        }
    }

    private List<Choice> silent(PanelTrial trial, Collection<RuleCard> cards) {
        Set<RuleCard> spoken = new HashSet<>();
        advice.panel().judgements().forEach(j -> j.reasons().forEach(r -> spoken.add(r.rule())));
        List<Silence> nearest = new ArrayList<>();
        for (RuleCard card : shuffled(cards.stream().sorted(Comparator.comparing(RuleCard::id)).toList())) {
            if (isReasonForOrAgainst(card) && !spoken.contains(card)) {
                trial.silences(card.name(), advice.panel().facts(), Place.of(advice.name())).stream().findFirst()
                        .ifPresent(nearest::add);
            }
        }
        nearest.sort(Comparator.comparing(s -> 2 * s.failures() > s.conditions().size()));
        return nearest.stream().map(s -> (Choice) new Choice.Untrue(s)).toList();
    }

    private static boolean isReasonForOrAgainst(RuleCard card) {
        return card.weight().isPresent() || card.pattern() == Pattern.NEVER_HERE || card.pattern() == Pattern.WAIT;
    }

    private <T> List<T> shuffled(List<T> items) {
        List<T> shuffled = new ArrayList<>(items);
        Collections.shuffle(shuffled, random);
        return shuffled;
    }
}
