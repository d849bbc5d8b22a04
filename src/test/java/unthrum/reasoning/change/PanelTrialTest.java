package unthrum.reasoning.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import unthrum.reasoning.Advisor;
import unthrum.reasoning.PanelAdvice;
import unthrum.derive.Derivation;
import unthrum.derive.PanelFacts;
import unthrum.effect.VehicleAccount;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.RuleSession;
import unthrum.survey.PanelEntry;
import unthrum.survey.Survey;

@DisplayName("One panel tried by itself")
class PanelTrialTest {

    private static final List<Path> FILES = Vehicles.FILES;

    @ParameterizedTest
    @FieldSource("FILES")
    @DisplayName("gets what it gets among all panels of its vehicle: the same rules, layup and verdict")
    void asAmongAll(Path file) {
        Survey survey = Vehicles.survey(file);
        try (RuleSession whole = Vehicles.ENGINE.open(); PanelTrial trial = Vehicles.trial(survey)) {
            List<PanelFacts> bundles = new Derivation(Vehicles.KNOWLEDGE).of(survey);
            bundles.forEach(b -> whole.state(b.panel(), b.facts()));
            List<Judgement> all = whole.judgements(c -> true);
            for (int i = 0; i < survey.panels().size(); i++) {
                PanelEntry panel = survey.panels().get(i);
                List<Judgement> own = all.stream().filter(j -> j.conclusion().place().isVehicle()
                        || j.conclusion().place().panel().equals(panel.panel())).toList();
                PanelAdvice among = new Advisor(Vehicles.KNOWLEDGE, Vehicles.CATALOGUE, VehicleAccount.of(Vehicles.KNOWLEDGE, survey, bundles))
                        .tryOut(bundles.get(i + 1), own, List.of());
                PanelAdvice alone = trial.advise(panel);
                assertThat(said(alone, panel)).as(panel.panel()).isEqualTo(said(among, panel));
                assertThat(alone.layup()).as(panel.panel()).isEqualTo(among.layup());
                assertThat(alone.verdict()).as(panel.panel()).isEqualTo(among.verdict());
            }
        }
    }

    /** What is concluded on the panel, with the rules behind it; bays differ by their rank among all. */
    private static Set<String> said(PanelAdvice advice, PanelEntry panel) {
        return advice.panel().judgements().stream().filter(j -> j.conclusion().place().panel().equals(panel.panel()))
                .map(j -> j.conclusion() + " " + j.reasons().stream().map(r -> r.rule().id()).sorted().toList())
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
