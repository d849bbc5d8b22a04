package unthrum.drill;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import unthrum.facts.Place;
import unthrum.facts.Veto;
import unthrum.knowledge.RuleCard;
import unthrum.material.Layer;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.Verdict;
import unthrum.reasoning.WeighedWant;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.Reason;

/**
 * What must be said of a panel: why it gets a layer, or why it gets none. Any one of the reasons says it.
 *
 * @param layer   absent when it is the panel's staying bare, waiting or being measured that is to be explained
 * @param reasons one for each rule, at the first place where it speaks
 */
public record Ground(Optional<Layer> layer, List<Reason> reasons) {

    /** All that must be said of a panel. */
    static List<Ground> of(PanelAdvice advice) {
        if (advice.verdict() == Verdict.HOLD) {
            return List.of(whole(reasons(advice.holds().stream())));
        }
        List<Ground> grounds = new ArrayList<>();
        Map<Layer, List<WeighedWant>> served = advice.served().stream()
                .collect(Collectors.groupingBy(WeighedWant::layer, TreeMap::new, Collectors.toList()));
        served.forEach((layer, wants) -> grounds.add(new Ground(Optional.of(layer),
                oneEach(wants.stream().flatMap(Ground::standing)))));
        if (advice.verdict() == Verdict.ASK) {
            grounds.add(whole(reasons(advice.questions().stream())));
        } else if (grounds.isEmpty() && !against(advice).isEmpty()) {
            grounds.add(whole(against(advice)));
        }
        return grounds;
    }

    private static Ground whole(List<Reason> reasons) {
        return new Ground(Optional.empty(), reasons);
    }

    /** What keeps the panel bare. */
    static List<Reason> against(PanelAdvice advice) {
        return reasons(advice.keptBareBy().stream());
    }

    private static Stream<Reason> standing(WeighedWant want) {
        return want.judgement().reasons().stream().filter(r -> want.vetoes().stream()
                .noneMatch(v -> v.standing().prevailsOver(r.rule().standing())));
    }

    private static List<Reason> reasons(Stream<Judgement> judgements) {
        return oneEach(judgements.flatMap(j -> j.reasons().stream()));
    }

    private static List<Reason> oneEach(Stream<Reason> reasons) {
        Map<RuleCard, Reason> byRule = new LinkedHashMap<>();
        reasons.forEach(r -> byRule.putIfAbsent(r.rule(), r));
        return List.copyOf(byRule.values());
    }

    /** Whether one of these rules says it. */
    boolean isSaidBy(Collection<RuleCard> rules) {
        return reasons.stream().anyMatch(r -> rules.contains(r.rule()));
    }
}
