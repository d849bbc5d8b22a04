package unthrum.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import unthrum.knowledge.Knowledge;
import unthrum.knowledge.RuleCard;
import unthrum.derive.Derivation;
import unthrum.derive.PanelFacts;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.Reason;
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
        Set<String> speaking = speaking(trial);
        if (trial.speaks()) {
            assertThat(speaking).contains(trial.rule());
        } else {
            assertThat(speaking).doesNotContain(trial.rule());
        }
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

    private static Set<String> speaking(Examples.Trial trial) {
        try (RuleSession session = ENGINE.open()) {
            for (PanelFacts bundle : new Derivation(KNOWLEDGE).of(trial.survey())) {
                session.state(bundle.panel(), bundle.facts());
            }
            return session.judgements(c -> true).stream().map(Judgement::reasons).flatMap(List::stream)
                    .map(Reason::rule).map(RuleCard::id).collect(Collectors.toSet());
        }
    }
}
