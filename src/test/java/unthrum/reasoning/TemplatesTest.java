package unthrum.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.TreeSet;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import unthrum.knowledge.Knowledge;
import unthrum.knowledge.RuleCard;
import unthrum.derive.Derivation;
import unthrum.derive.PanelFacts;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.Reason;
import unthrum.reasoning.engine.RuleEngine;
import unthrum.reasoning.engine.RuleSession;
import unthrum.report.PlaceNames;
import unthrum.report.Sentences;

@DisplayName("Every rule's sentences fill from its examples")
class TemplatesTest {

    private static final Knowledge KNOWLEDGE = Knowledge.load();
    private static final RuleEngine ENGINE = new RuleEngine(KNOWLEDGE);

    @Test
    @DisplayName("with every slot known, no article amiss, no gap and no full stop of their own")
    void fill() {
        Set<String> filled = new TreeSet<>();
        for (Examples.Trial trial : Examples.all()) {
            List<PanelFacts> bundles = new Derivation(KNOWLEDGE).of(trial.survey());
            Sentences here = new Sentences(PlaceNames.on(bundles.get(1)));
            reasons(bundles).forEach(reason -> {
                clauses(reason, here).forEach(clause -> check(reason.rule(), clause));
                clauses(reason, new Sentences(PlaceNames.anywhere())).forEach(c -> check(reason.rule(), c));
                filled.add(reason.rule().id());
            });
        }
        assertThat(filled).isEqualTo(new TreeSet<>(KNOWLEDGE.cards().stream().map(RuleCard::id).toList()));
    }

    private static Stream<String> clauses(Reason reason, Sentences sentences) {
        return Stream.concat(Stream.of(sentences.because(reason)),
                reason.rule().advice().map(a -> sentences.advice(reason)).stream());
    }

    private static void check(RuleCard rule, String clause) {
        assertThat(clause).as(rule.id()).isNotBlank().doesNotEndWith(".").doesNotContain("{").doesNotContain("  ")
                .doesNotContain("NaN").doesNotContainPattern("\\ba [aeio]").doesNotContainPattern("\\bthe the\\b")
                .doesNotContainPattern("[A-Z]_[A-Z]").doesNotContainPattern("\\[|]");
    }

    private static List<Reason> reasons(List<PanelFacts> bundles) {
        try (RuleSession session = ENGINE.open()) {
            bundles.forEach(b -> session.state(b.panel(), b.facts()));
            return session.judgements(c -> true).stream().map(Judgement::reasons).flatMap(List::stream).toList();
        }
    }
}
