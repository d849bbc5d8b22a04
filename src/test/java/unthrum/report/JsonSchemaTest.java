package unthrum.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
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
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;

@DisplayName("JSON of plans and cases")
class JsonSchemaTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    static List<Path> scenarios() {
        return Scenarios.files();
    }

    private static JsonSchema schema(String name) {
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(
                JsonSchemaTest.class.getResourceAsStream("/unthrum/" + name + ".schema.json"));
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("a plan keeps to the published schema and holds every panel")
    void plan(Path file) throws IOException {
        Plan plan = Scenarios.plan(file);
        String json = PlanJson.of(plan, List.of());
        assertThat(schema("plan").validate(json, InputFormat.JSON)).isEmpty();
        JsonNode panels = MAPPER.readTree(json).get("panels");
        assertThat(panels).extracting(p -> p.get("panel").asText())
                .isEqualTo(plan.panels().stream().map(PlannedPanel::name).toList());
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("the case of every panel keeps to the published schema")
    void cases(Path file) {
        JsonSchema schema = schema("case");
        Plan plan = Scenarios.plan(file);
        assertThat(plan.panels()).allSatisfy(panel -> assertThat(schema.validate(CaseJson.of(panel,
                plan.effects().panel(panel.name()).orElseThrow(), Scenarios.KNOWLEDGE), InputFormat.JSON))
                .as(panel.name()).isEmpty());
    }

    @Test
    @DisplayName("the schemas refuse what they do not know and what is missing")
    void refuses() throws IOException {
        String json = PlanJson.of(Scenarios.plan("one-pack-hatchback"), List.of("tunnel"));
        var plan = (com.fasterxml.jackson.databind.node.ObjectNode) MAPPER.readTree(json);
        assertThat(schema("plan").validate(plan)).isEmpty();
        plan.put("colour", "red").remove("totals");
        assertThat(schema("plan").validate(plan)).hasSize(2);
    }

    @Test
    @DisplayName("wants and candidates point at conclusions of the right kind")
    void indices() throws IOException {
        JsonNode plan = MAPPER.readTree(PlanJson.of(Scenarios.plan("sleeper-city-van"), List.of()));
        int pointers = 0;
        for (JsonNode panel : plan.get("panels")) {
            JsonNode all = panel.get("conclusions");
            for (JsonNode want : panel.get("wants")) {
                assertThat(all.get(want.get("conclusion").asInt()).get("kind").asText()).isEqualTo("want");
                want.get("vetoes").forEach(v -> assertThat(all.get(v.asInt()).get("kind").asText()).isEqualTo("veto"));
                pointers += 1 + want.get("vetoes").size();
            }
            for (JsonNode candidate : panel.get("considered")) {
                candidate.get("rejectedBy").forEach(l -> assertThat(all.get(l.asInt()).get("kind").asText())
                        .isEqualTo("limit"));
                pointers += candidate.get("rejectedBy").size();
            }
        }
        assertThat(pointers).isGreaterThan(100);
    }

    /** Sharing counts each quarter of a patch in whole grams, rounded up. */
    @Test
    @DisplayName("masses in the plan add up to its total, but for the grams that each quarter patch is rounded up by")
    void masses() throws IOException {
        JsonNode plan = MAPPER.readTree(PlanJson.of(Scenarios.plan("sleeper-city-van"), List.of()));
        double sum = 0;
        int patches = 0;
        for (JsonNode panel : plan.get("panels")) {
            sum += panel.get("layup").get("mass").get("value").asDouble();
            for (JsonNode laid : panel.get("layup").get("layers")) {
                patches += laid.get("patches").size();
            }
        }
        assertThat(sum).isGreaterThan(10);
        assertThat(plan.get("totals").get("mass").get("value").asDouble() - sum)
                .isBetween(-0.001, 0.004 * patches + 0.001);
    }
}
