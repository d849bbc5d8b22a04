package unthrum.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import unthrum.facts.Conclusion;
import unthrum.facts.Limit;
import unthrum.facts.Veto;
import unthrum.facts.Want;
import unthrum.knowledge.Knowledge;
import unthrum.knowledge.RuleCard;
import unthrum.derive.Derivation;
import unthrum.derive.PanelFacts;
import unthrum.material.Layer;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.RuleEngine;
import unthrum.reasoning.engine.RuleSession;

@DisplayName("Every rule speaks on its examples and is silent on its near misses")
class ExamplesTest {

    private static final Knowledge KNOWLEDGE = Knowledge.load();
    private static final RuleEngine ENGINE = new RuleEngine(KNOWLEDGE);
    private static final List<Examples.Trial> TRIALS = Examples.all();

    static List<Examples.Trial> trials() {
        return TRIALS;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("trials")
    @DisplayName("example")
    void speaksOrIsSilentAsItsExampleSays(Examples.Trial trial) {
        List<Conclusion> said = said(trial);
        Set<Layer> named = said.stream().map(ExamplesTest::layer).flatMap(Optional::stream).collect(Collectors.toSet());
        if (trial.speaks()) {
            assertThat(said).isNotEmpty();
            assertThat(named).containsAll(trial.of());
        } else if (trial.of().isEmpty()) {
            assertThat(said).isEmpty();
        } else {
            assertThat(named).doesNotContainAnyElementsOf(trial.of());
        }
    }

    private static Optional<Layer> layer(Conclusion conclusion) {
        if (conclusion instanceof Want want) {
            return Optional.of(want.layer());
        }
        if (conclusion instanceof Veto veto) {
            return Optional.of(veto.layer());
        }
        return conclusion instanceof Limit limit ? Optional.of(limit.layer()) : Optional.empty();
    }

    @Test
    @DisplayName("every rule has both, and every example names a rule there is")
    void everyRuleHasBoth() {
        assertThat(rulesWith(true)).isEqualTo(ruleIds());
        assertThat(rulesWith(false)).isEqualTo(ruleIds());
    }

    private static Set<String> rulesWith(boolean speaks) {
        return TRIALS.stream().filter(t -> t.speaks() == speaks).map(Examples.Trial::rule)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> ruleIds() {
        return KNOWLEDGE.cards().stream().map(RuleCard::id).collect(Collectors.toCollection(TreeSet::new));
    }

    private static List<Conclusion> said(Examples.Trial trial) {
        try (RuleSession session = ENGINE.open()) {
            for (PanelFacts bundle : new Derivation(KNOWLEDGE).of(trial.survey())) {
                session.state(bundle.panel(), bundle.facts());
            }
            return session.judgements(c -> true).stream()
                    .filter(j -> j.reasons().stream().anyMatch(r -> r.rule().id().equals(trial.rule())))
                    .map(Judgement::conclusion).toList();
        }
    }
}
