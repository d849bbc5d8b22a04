package unthrum.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import unthrum.Scenarios;
import unthrum.built.Edit;
import unthrum.plan.Plan;
import unthrum.survey.Overrule;
import unthrum.survey.Survey;

@DisplayName("An overrule in a plan")
class OverruleTextTest {
    private static final String PANEL = "roof-tail";
    private static final LocalDate DAY = LocalDate.of(2026, 2, 3);
    private static final Plan PLAN = plan(
            new Overrule("diagnosis/curved-quiet", Optional.of("the client hears it"), "A. Fitter", DAY),
            new Overrule("diagnosis/dead-bay", Optional.empty(), "B. Fitter", DAY),
            new Overrule("barrier/not-on-roof", Optional.of("it will hold"), "C. Fitter", DAY),
            new Overrule("wear/bind-edges", Optional.of("nobody sees them"), "D. Fitter", DAY));

    private static Plan plan(Overrule... overrules) {
        Survey survey = Scenarios.plan("sleeper-city-van").survey();
        return Scenarios.PLANNER.plan(Edit.with(survey, "panels", survey.panels().stream().map(p ->
                p.panel().equals(PANEL) ? Edit.with(p, "overrules", Optional.of(List.of(overrules))) : p).toList()));
    }

    private static String line(String rule) {
        return PlanText.of(PLAN, List.of(PANEL), 2000, Style.PLAIN).lines().filter(l -> l.endsWith("[" + rule + "]"))
                .filter(l -> l.contains("Fitter")).findFirst().orElseThrow();
    }

    @Test
    @DisplayName("that counts shows who set which rule aside and why, and the rule's own argument against it")
    void counts() {
        assertThat(line("diagnosis/curved-quiet")).contains(
                "Set aside by A. Fitter on 2026-02-03: the client hears it.", "The rule: ", "Against setting it aside: The panel");
    }

    @Test
    @DisplayName("without a reason, against safety or without a rule that speaks says why it does not count")
    void others() {
        assertThat(line("diagnosis/dead-bay")).contains("Not set aside, since B. Fitter on 2026-02-03 gave no reason.",
                "Against setting it aside: ");
        assertThat(line("barrier/not-on-roof")).contains("Not set aside, though C. Fitter on 2026-02-03 wished it: "
                + "it will hold.", "No judgement sets aside what stands on safety.", "glue above people");
        assertThat(line("wear/bind-edges")).contains("D. Fitter on 2026-02-03 set aside does not speak here");
    }

    @Test
    @DisplayName("stands in the case of its panel too, and on no other panel")
    void elsewhere() {
        assertThat(CaseText.of(PLAN.panel(PANEL).orElseThrow(), Optional.empty(), false, Scenarios.KNOWLEDGE, 2000,
                Style.PLAIN)).contains("Set aside by the fitter").contains("Set aside by A. Fitter");
        assertThat(PlanText.of(PLAN, List.of("roof-bed"), 80, Style.PLAIN)).doesNotContain("overruled");
    }

    @Test
    @DisplayName("stands in the JSON by the schema, each with its effect and what the rule says")
    void json() throws IOException {
        JsonNode plan = new ObjectMapper().readTree(PlanJson.of(PLAN, List.of(PANEL)));
        assertThat(JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(
                OverruleTextTest.class.getResourceAsStream("/unthrum/plan.schema.json")).validate(plan)).isEmpty();
        JsonNode overrules = plan.at("/panels/0/overrules");
        assertThat(overrules).extracting(o -> o.get("effect").asText())
                .containsExactly("counts", "no reason", "too strong", "pointless");
        assertThat(overrules.get(0).at("/against/0/reasons/0/rule").asText()).isEqualTo("diagnosis/curved-quiet");
        assertThat(overrules.get(3).get("against")).isEmpty();
    }
}
