package unthrum.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import unthrum.Scenarios;
import unthrum.effect.Layup;
import unthrum.facts.Veto;
import unthrum.material.Layer;
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;
import unthrum.reasoning.Verdict;
import unthrum.survey.SurveyReader;

@DisplayName("A panel stays bare for what decided it")
class BareReasonsTest {

    @TempDir
    private Path folder;

    private PlannedPanel panel(String facts) throws IOException {
        Path file = Files.writeString(folder.resolve("survey.yaml"), """
                survey: One panel
                vehicle: {body: off-roader, drive: diesel, use: [daily]}
                aims: [road drumming]
                panels:
                  - {panel: it, skin: {metal: steel, gauge: 0.8 mm}, behind: none, moving: none, %s}
                """.formatted(facts));
        return Scenarios.PLANNER.plan(SurveyReader.read(file)).panels().get(0);
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '|', value = {
        "zone: roof, size: [1400 mm, 1200 mm], shape: {curve: flat}, tap: dull, clearance: 4 mm, near ear: \"no\" | answers dull",
        "zone: side, size: [400 mm, 300 mm], shape: {curve: flat}, tap: dead, clearance: 3 mm, near noise: none | answers dead",
        "zone: boot floor, size: [800 mm, 80 mm], shape: {curve: flat}, tap: dull, clearance: 3 mm, traffic: none, near ear: \"no\" | spans only 80 mm",
    })
    @DisplayName("dull, dead, short, and not for a layer that nobody asked for")
    void decided(String facts, String why) throws IOException {
        PlannedPanel panel = panel(facts);
        assertThat(panel.verdict()).isEqualTo(Verdict.LEAVE_BARE);
        Sentences sentences = new Sentences(PlaceNames.on(panel.advice().panel().facts()));
        assertThat(Told.of(panel.advice().keptBareBy().stream(), sentences).stream().map(Told::clause))
                .anyMatch(clause -> clause.contains(why));
    }

    @Test
    @DisplayName("in every scenario: what is told speaks of a layer that a rule wants there, of damping, or of every layer")
    void asked() {
        int bare = 0;
        for (Path file : Scenarios.files()) {
            Plan plan = Scenarios.plan(file);
            for (PlannedPanel panel : plan.panels()) {
                if (panel.verdict() == Verdict.LEAVE_BARE && panel.layup().equals(Layup.NOTHING)) {
                    List<Layer> wanted = panel.advice().wants().stream().map(w -> w.layer()).toList();
                    panel.advice().keptBareBy().stream().map(j -> j.conclusion()).filter(Veto.class::isInstance)
                            .map(c -> ((Veto) c).layer()).forEach(layer -> assertThat(layer == Layer.DAMPING
                                    || layer == Layer.ANY || wanted.stream().anyMatch(w -> w.matches(layer)))
                                    .as(panel.name() + ": " + layer).isTrue());
                    bare++;
                }
            }
        }
        assertThat(bare).isGreaterThan(10);
    }
}
