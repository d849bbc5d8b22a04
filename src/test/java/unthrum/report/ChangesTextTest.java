package unthrum.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.reading.RecordPath;
import unthrum.reasoning.change.Doubt;
import unthrum.reasoning.change.PanelTrial;
import unthrum.reasoning.change.Turned;
import unthrum.reasoning.change.Unknowns;
import unthrum.reasoning.change.WhatIf;
import unthrum.reasoning.engine.RuleEngine;
import unthrum.survey.PanelEntry;
import unthrum.survey.Survey;
import unthrum.survey.SurveyReader;

@DisplayName("Changes and questions in words")
class ChangesTextTest {

    private static final Knowledge KNOWLEDGE = Knowledge.load();
    private static final Catalogue CATALOGUE = Catalogue.load();
    private static final RuleEngine ENGINE = new RuleEngine(KNOWLEDGE);
    private static final Style PLAIN = Style.of(false, StandardCharsets.UTF_8);
    private static final int WIDTH = 80;

    @ParameterizedTest
    @ValueSource(strings = {"sleeper-city-van", "one-pack-hatchback", "shell-pickup"})
    @DisplayName("read like speech on every panel: no class names, no null, ids in brackets only, within the width")
    void speech(String scenario) throws IOException {
        Survey survey = SurveyReader.read(Path.of("scenarios", scenario + ".yaml"));
        try (PanelTrial trial = new PanelTrial(ENGINE, CATALOGUE, survey)) {
            for (PanelEntry panel : survey.panels().subList(0, Math.min(8, survey.panels().size()))) {
                Turned turned = Turned.of(trial, panel);
                String text = ChangesText.of(turned, Optional.empty(), true, Optional.empty(), KNOWLEDGE, WIDTH, PLAIN);
                readable(text);
                assertThat(text).contains("Why not", "What would change it", "How sure it is");
                new ObjectMapper().readTree(ChangesJson.of(turned, KNOWLEDGE));
            }
            readable(AskText.of(survey.survey(), new Unknowns(trial).of(survey),
                    survey.panels().stream().map(trial::advise).filter(a -> a.slight().isPresent()).toList(), CATALOGUE.currency(), WIDTH, PLAIN));
            readable(DoubtText.of(survey.survey(), Doubt.of(trial, survey.panels()), WIDTH, PLAIN));
        }
    }

    private static void readable(String text) {
        String spoken = text.replaceAll("\\[[a-z]+/[a-z0-9-]+]", "");
        assertThat(spoken).doesNotContain("null", "unthrum.", "Optional", "[]", "Spot", "degC", "  .", " ,", "..", "$",
                "==", "Infinity", "NaN").doesNotContainPattern("[A-Z]{2,}_|[a-z]+/[a-z]+-[a-z]+|\\b1 (panels|assumptions)\\b");
        assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(WIDTH));
    }

    @Test
    @DisplayName("say what an edit does beside today, and only that")
    void whatIf() throws IOException {
        Survey survey = SurveyReader.read(Path.of("scenarios/sleeper-city-van.yaml"));
        PanelEntry roof = survey.panels().stream().filter(p -> p.panel().equals("roof-middle")).findFirst().orElseThrow();
        try (PanelTrial trial = new PanelTrial(ENGINE, CATALOGUE, survey)) {
            WhatIf whatIf = WhatIf.of(trial, roof, "--if", List.of("clearance=9 mm"));
            String text = WhatIfText.of(whatIf, WIDTH, PLAIN);
            readable(text);
            assertThat(text).contains("With 9 mm clearance instead of 24 mm.", "Today", "Then",
                    "the insulation falls away and the verdict", "No longer holds");
            assertThat(new ObjectMapper().readTree(ChangesJson.of(whatIf)).at("/turns/0/to/value").asInt()).isEqualTo(9);
            assertThat(WhatIfText.of(WhatIf.of(trial, roof, "--if", List.of("clearance=24 mm")), WIDTH, PLAIN))
                    .contains("So the panel gets the same.").doesNotContain("Holds then");
        }
    }

    @Test
    @DisplayName("an edit that states what was assumed says so, and a list is said by what stands on it")
    void statedAndLists() throws IOException {
        Survey survey = SurveyReader.read(Path.of("scenarios", "sleeper-city-van.yaml"));
        PanelEntry panel = RecordPath.of(PanelEntry.class, "behind").with(
                RecordPath.of(PanelEntry.class, "reach").with(survey.panels().get(0), null), null);
        try (PanelTrial trial = new PanelTrial(ENGINE, CATALOGUE, survey)) {
            String text = WhatIfText.of(WhatIf.of(trial, panel, "--if", List.of("reach=open", "behind=airbag")), WIDTH,
                    PLAIN);
            assertThat(text).contains("- With the reach 'open', measured and no longer assumed.",
                    "- With 'airbag' on the list of what lies behind, which is not written down.");
        }
    }
}
