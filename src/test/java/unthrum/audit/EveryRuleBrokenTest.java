package unthrum.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import unthrum.Scenarios;
import unthrum.built.Built;
import unthrum.facts.Conclusion;
import unthrum.facts.Duty;
import unthrum.facts.Hold;
import unthrum.facts.Limit;
import unthrum.facts.Pairing;
import unthrum.facts.Veto;
import unthrum.knowledge.RuleCard;
import unthrum.plan.Plan;
import unthrum.reasoning.Examples;
import unthrum.reasoning.engine.Judgement;

/**
 * Each rule that forbids, bounds, ties, holds or asks for work is broken on the panel of its own example: the job that
 * the plan would have made is sound, the broken one is found under the rule's name.
 */
@DisplayName("A job that breaks one rule")
class EveryRuleBrokenTest {
    private static final List<Class<? extends Conclusion>> BREAKABLE =
            List.of(Veto.class, Limit.class, Pairing.class, Hold.class, Duty.class);
    private static final Map<String, List<Examples.Trial>> TRIALS = Examples.all().stream()
            .filter(Examples.Trial::speaks).collect(Collectors.groupingBy(Examples.Trial::rule, LinkedHashMap::new,
                    Collectors.toList()));

    static Stream<String> rules() {
        return TRIALS.keySet().stream().filter(EveryRuleBrokenTest::isBreakable);
    }

    private static boolean isBreakable(String rule) {
        RuleCard card = Scenarios.KNOWLEDGE.cards().stream().filter(c -> c.id().equals(rule)).findFirst().orElseThrow();
        return Set.of("never here", "never together", "sets a bound", "useless without its companion", "wait",
                "must be done").contains(card.pattern().toString());
    }

    @ParameterizedTest
    @MethodSource("rules")
    @DisplayName("is found under that rule")
    void broken(String rule) {
        List<String> tried = new ArrayList<>();
        for (Examples.Trial trial : TRIALS.get(rule)) {
            Plan plan = Scenarios.PLANNER.plan(trial.survey());
            for (Judgement judgement : concluded(plan, rule)) {
                Built built = new Breaking(plan, judgement, rule).built();
                List<Finding> findings = Scenarios.AUDITOR.audit(plan, built).findings();
                if (findings.stream().anyMatch(f -> f.rules().contains(rule))) {
                    return;
                }
                tried.add(trial.says() + ": " + judgement.conclusion() + " -> " + findings);
            }
        }
        assertThat(tried).as("broken, and not found under " + rule).isEmpty();
        throw new AssertionError(rule + " concluded nothing on its examples");
    }

    @Test
    @DisplayName("was sound before: the plan's own layup as built gives no finding on any example, speaking or silent")
    void soundBefore() {
        List<String> wrong = new ArrayList<>();
        List<Examples.Trial> all = Examples.all();
        for (Examples.Trial trial : all) {
            Plan plan = Scenarios.PLANNER.plan(trial.survey());
            List<Finding> findings = Scenarios.AUDITOR.audit(plan, SoundJob.of(plan)).findings();
            if (!findings.isEmpty()) {
                wrong.add(trial + ": " + findings);
            }
        }
        assertThat(all).hasSizeGreaterThan(300);
        assertThat(wrong).isEmpty();
    }

    @Test
    @DisplayName("is only met where the rule can be broken at all: every kind of conclusion is covered")
    void kinds() {
        Set<String> kinds = new TreeSet<>();
        rules().forEach(rule -> concluded(Scenarios.PLANNER.plan(TRIALS.get(rule).get(0).survey()), rule)
                .forEach(j -> kinds.add(j.conclusion().getClass().getSimpleName())));
        assertThat(kinds).containsExactly("Duty", "Hold", "Limit", "Pairing", "Veto");
    }

    private static List<Judgement> concluded(Plan plan, String rule) {
        return Stream.concat(plan.forAll().stream(), plan.panels().stream()
                .flatMap(p -> p.advice().panel().judgements().stream())).distinct()
                .filter(j -> BREAKABLE.contains(j.conclusion().getClass()))
                .filter(j -> j.reasons().stream().anyMatch(r -> r.rule().id().equals(rule))).toList();
    }
}
