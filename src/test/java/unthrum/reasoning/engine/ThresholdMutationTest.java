package unthrum.reasoning.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.kie.api.definition.rule.Rule;
import org.kie.api.runtime.KieSession;
import unthrum.facts.Conclusion;
import unthrum.facts.Threshold;
import unthrum.knowledge.Knowledge;
import unthrum.knowledge.RuleText;
import unthrum.reasoning.Examples;
import unthrum.derive.Derivation;
import unthrum.derive.PanelFacts;
import unthrum.survey.Survey;

@DisplayName("A number that is off by a quarter is noticed by an example")
class ThresholdMutationTest {

    private static final Knowledge KNOWLEDGE = Knowledge.load();
    private static final Map<String, RuleShape> SHAPES = new HashMap<>();
    private static final List<Examples.Trial> TRIALS = Examples.all();
    private static final Map<Examples.Trial, List<PanelFacts>> FACTS = new LinkedHashMap<>();

    /**
     * A guard that no panel of today reaches: on usual foam of any depth a usual barrier resonates above 250 Hz, far
     * above every drone. It holds the rule's sentence true should a shop change its usual foam.
     */
    private static final Set<String> OUT_OF_REACH = Set.of("decoupling/drone-below-resonance");

    /** One threshold in one rule's conditions or conclusion, moved up or down. */
    record Mutant(String rule, Threshold was, Threshold is) {
        @Override
        public String toString() {
            return rule + " with " + was.id() + " at " + is + " for " + was;
        }
    }

    static {
        KNOWLEDGE.rules().compiled().getKiePackages().stream().flatMap(p -> p.getRules().stream())
                .forEach((Rule rule) -> SHAPES.put(rule.getName(), RuleShape.of(rule)));
    }

    static List<Mutant> mutants() {
        return RuleText.shipped().stream().filter(r -> !OUT_OF_REACH.contains(r.id())).flatMap(rule -> rule.thresholds().entrySet().stream()
                .filter(t -> compares(rule, t.getKey()))
                .flatMap(t -> List.of(1, -1).stream().map(way -> mutant(rule.id(), number(t.getValue()), way))))
                .toList();
    }

    /** Numbers that are only told in the rule's sentence change no outcome. */
    private static boolean compares(RuleText rule, String variable) {
        return rule.conditions().stream().anyMatch(c -> c.contains("$" + variable + ".value"))
                || rule.consequences().stream().anyMatch(c -> c.contains("$" + variable + ".value"));
    }

    private static Threshold number(String id) {
        return KNOWLEDGE.numbers().stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow();
    }

    private static Mutant mutant(String rule, Threshold was, int way) {
        double by = was.value() == 0 ? 1 : Math.abs(was.value()) / 4;
        return new Mutant(rule, was, new Threshold(was.id(), was.value() + way * by, was.dimension()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("mutants")
    @DisplayName("mutant")
    void isNoticed(Mutant mutant) {
        List<Examples.Trial> own = TRIALS.stream().filter(t -> t.rule().equals(mutant.rule())).toList();
        assertThat(own).as(mutant.toString()).anyMatch(t -> !said(t, mutant.rule(), mutant.was()).equals(said(t, mutant.rule(), mutant.is())));
    }

    /** What the rule concludes on an example, with one number in place of the usual one. */
    private static Set<Conclusion> said(Examples.Trial trial, String rule, Threshold number) {
        KieSession session = KNOWLEDGE.rules().compiled().newKieSession();
        try {
            KNOWLEDGE.numbers().forEach(n -> session.insert(n.id().equals(number.id()) ? number : n));
            facts(trial).forEach(bundle -> bundle.facts().forEach(session::insert));
            session.fireAllRules();
            return new Justifications(KNOWLEDGE, SHAPES).read(session, c -> true).stream()
                    .filter(j -> j.reasons().stream().anyMatch(r -> r.rule().id().equals(rule)))
                    .map(Judgement::conclusion).collect(Collectors.toCollection(HashSet::new));
        } finally {
            session.dispose();
        }
    }

    private static List<PanelFacts> facts(Examples.Trial trial) {
        Survey survey = trial.survey();
        return FACTS.computeIfAbsent(trial, t -> new Derivation(KNOWLEDGE).of(survey));
    }
}
