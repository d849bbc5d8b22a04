package unthrum.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import unthrum.Scenarios;
import unthrum.reasoning.change.Doubt;
import unthrum.reasoning.change.PanelTrial;
import unthrum.reasoning.change.Turned;
import unthrum.reasoning.change.Unknowns;
import unthrum.reasoning.change.WhatIf;
import unthrum.reasoning.engine.RuleEngine;
import unthrum.survey.PanelEntry;
import unthrum.survey.Survey;

@DisplayName("JSON of changes, panels as they might be, questions and doubts")
class ChangesJsonTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final RuleEngine ENGINE = new RuleEngine(Scenarios.KNOWLEDGE);
    /** Every so many panels of a scenario: enough of them for each cause and each kind of change. */
    private static final int EVERY = 9;

    static List<Path> scenarios() {
        return Scenarios.files();
    }

    private static JsonSchema schema(String name) {
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(
                ChangesJsonTest.class.getResourceAsStream("/unthrum/" + name + ".schema.json"));
    }

    private static PanelTrial trial(Survey survey) {
        return new PanelTrial(ENGINE, Scenarios.CATALOGUE, survey);
    }

    private static JsonNode read(String json) {
        try {
            return MAPPER.readTree(json);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("changes keep to the published schema and hold every change that was found")
    void changes(Path file) {
        Survey survey = Scenarios.survey(file);
        JsonSchema schema = schema("changes");
        try (PanelTrial trial = trial(survey)) {
            for (int i = 0; i < survey.panels().size(); i += EVERY) {
                Turned turned = Turned.of(trial, survey.panels().get(i));
                JsonNode json = read(ChangesJson.of(turned, Scenarios.KNOWLEDGE));
                assertThat(schema.validate(json)).as(turned.advice().name()).isEmpty();
                assertThat(json.get("changes")).hasSameSizeAs(turned.changes());
                assertThat(json.get("whyNot")).hasSameSizeAs(turned.whyNots());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("a panel as it might be keeps to the published schema and shows both sides")
    void whatIfs(Path file) {
        Survey survey = Scenarios.survey(file);
        JsonSchema schema = schema("what-if");
        try (PanelTrial trial = trial(survey)) {
            for (PanelEntry panel : survey.panels()) {
                JsonNode json = read(ChangesJson.of(
                        WhatIf.of(trial, panel, "--if", List.of("clearance=3 mm", "wet=damp"))));
                assertThat(schema.validate(json)).as(panel.panel()).isEmpty();
                assertThat(json.at("/turns/0/to/value").asDouble()).isEqualTo(3);
                assertThat(json.at("/turns/1/to").asText()).isEqualTo("damp");
                assertThat(json.at("/then/mass/unit").asText()).isEqualTo("kg");
            }
        }
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("questions keep to the published schema, each unknown fact being asked or idle")
    void questions(Path file) {
        Survey survey = Scenarios.survey(file);
        try (PanelTrial trial = trial(survey)) {
            var unknowns = new Unknowns(trial).of(survey);
            JsonNode json = read(ChangesJson.of(survey.survey(), unknowns, List.of(), Scenarios.CATALOGUE.currency()));
            assertThat(schema("questions").validate(json)).isEmpty();
            assertThat(json.get("questions").size() + json.get("idle").size()).isEqualTo(unknowns.size()).isPositive();
        }
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("doubts keep to the published schema")
    void doubts(Path file) {
        Survey survey = Scenarios.survey(file);
        try (PanelTrial trial = trial(survey)) {
            List<Doubt> doubts = Doubt.of(trial, survey.panels().subList(0, Math.min(EVERY, survey.panels().size())));
            JsonNode json = read(ChangesJson.ofDoubts(survey.survey(), doubts));
            assertThat(schema("doubts").validate(json)).isEmpty();
            assertThat(json.get("panels")).hasSameSizeAs(doubts).isNotEmpty();
        }
    }

    @Test
    @DisplayName("the schemas refuse what they do not know and what is missing")
    void refuses() {
        Survey survey = Scenarios.survey(scenarios().get(0));
        try (PanelTrial trial = trial(survey)) {
            PanelEntry panel = survey.panels().get(0);
            refuses("what-if", ChangesJson.of(WhatIf.of(trial, panel, "--if", List.of("clearance=3 mm"))), "then");
            refuses("changes", ChangesJson.of(Turned.of(trial, panel), Scenarios.KNOWLEDGE), "confidence");
            refuses("questions", ChangesJson.of("van", List.of(), List.of(), "EUR"), "idle");
            refuses("doubts", ChangesJson.ofDoubts("van", List.of()), "panels");
        }
    }

    private static void refuses(String name, String json, String needed) {
        ObjectNode document = (ObjectNode) read(json);
        assertThat(schema(name).validate(document)).as(name).isEmpty();
        document.put("colour", "red").remove(needed);
        assertThat(schema(name).validate(document)).as(name).hasSize(2);
    }
}
