package unthrum.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import unthrum.Scenarios;
import unthrum.derive.PanelFacts;
import unthrum.effect.EffectCalculator;
import unthrum.effect.Laid;
import unthrum.effect.Layup;
import unthrum.effect.PanelEffect;
import unthrum.effect.Patch;
import unthrum.effect.Treated;
import unthrum.facts.Panel;
import unthrum.facts.Place;
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;

@DisplayName("What a floated barrier does to sound is said to be computed, not measured")
class FloatedWordsTest {

    private static final Plan PLAN = Scenarios.plan("sleeper-city-van");
    private static final List<PanelFacts> PANELS = PLAN.panels().stream().map(p -> p.advice().panel().facts()).toList();
    private static final EffectCalculator CALCULATOR =
            EffectCalculator.of(Scenarios.KNOWLEDGE, PLAN.survey(), PLAN.vehicle(), PANELS);

    private static PanelEffect effect(PanelFacts panel, String... materials) {
        Patch all = new Patch(Place.of(panel.panel()), 1, panel.the(Panel.class).area());
        return CALCULATOR.of(new Treated(panel, new Layup(Arrays.stream(materials)
                .map(m -> new Laid(Scenarios.CATALOGUE.find(m).orElseThrow(), List.of(all))).toList()), Set.of()));
    }

    private static List<String> text(PanelFacts panel, PanelEffect effect) {
        return new PanelEffectText(effect, new Sentences(PlaceNames.on(panel))).lines();
    }

    @Test
    @DisplayName("in these words")
    void words() {
        assertThat(PanelEffectText.COMPUTED).contains("computed, not measured");
    }

    @Test
    @DisplayName("in a panel's text, on foam and on felt, with or without a figure of its wall; not of a barrier laid direct")
    void text() {
        for (PanelFacts panel : PANELS) {
            for (String bed : List.of("pe-foam-6", "open-pu-10", "rag-felt-8")) {
                assertThat(text(panel, effect(panel, bed, "vinyl-barrier-2"))).as(panel.panel()).contains(PanelEffectText.COMPUTED);
            }
            assertThat(text(panel, effect(panel, "vinyl-barrier-2"))).as(panel.panel()).doesNotContain(PanelEffectText.COMPUTED);
            assertThat(text(panel, effect(panel))).as(panel.panel()).doesNotContain(PanelEffectText.COMPUTED);
        }
    }

    @Test
    @DisplayName("in JSON")
    void json() {
        for (PanelFacts panel : PANELS) {
            Map<String, Object> floated = RecordJson.object(effect(panel, "pe-foam-6", "vinyl-barrier-2"));
            assertThat(floated).as(panel.panel()).containsEntry("wallMeasured", false);
            assertThat(floated.get("blocking").toString()).doesNotContain("measured=true");
            assertThat(RecordJson.object(effect(panel, "vinyl-barrier-2"))).containsEntry("wallMeasured", true);
        }
    }

    @Test
    @DisplayName("where a plan holds a barrier laid direct against a floated one")
    void against() {
        List<String> told = Scenarios.names().stream().map(Scenarios::plan).flatMap(plan -> plan.panels().stream())
                .flatMap(p -> notLaid(p).stream()).filter(line -> line.contains("On foam the best would be")).toList();
        assertThat(told).isNotEmpty().allMatch(line -> line.contains("(computed, not measured)"));
    }

    private static List<String> notLaid(PlannedPanel panel) {
        return new Unserved(panel, new Sentences(PlaceNames.on(panel.advice().panel().facts()))).told().stream()
                .map(Object::toString).toList();
    }
}
