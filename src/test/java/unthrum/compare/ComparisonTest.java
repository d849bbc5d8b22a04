package unthrum.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import unthrum.Scenarios;
import unthrum.audit.SoundJob;
import unthrum.built.Built;
import unthrum.built.Edit;
import unthrum.facts.Place;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.plan.Plan;
import unthrum.plan.Planner;
import unthrum.reading.Dimension;
import unthrum.reading.Quantity;
import unthrum.reasoning.Verdict;
import unthrum.reasoning.engine.Judgement;
import unthrum.survey.PanelEntry;
import unthrum.survey.Survey;
import unthrum.survey.SurveyReader;
import unthrum.survey.Tap;

@DisplayName("A comparison of two plans")
class ComparisonTest {
    private static final Planner PLANNER = new Planner(Knowledge.load(), Catalogue.load());
    private static final Survey SURVEY = SurveyReader.read(Path.of("scenarios/shell-pickup.yaml"));

    private static Side side(Survey survey) {
        return Side.of(survey.survey(), PLANNER.plan(survey));
    }

    private static Survey edited(String panel, String component, Object value) {
        return Edit.with(SURVEY, "panels", SURVEY.panels().stream()
                .map(p -> p.panel().equals(panel) ? Edit.with(p, component, Optional.of(value)) : p).toList());
    }

    private static List<String> rules(List<Judgement> judgements) {
        return judgements.stream().flatMap(j -> j.reasons().stream()).map(r -> r.rule().id()).toList();
    }

    @Test
    @DisplayName("is nothing when both are alike")
    void same() {
        assertThat(Comparison.of(side(SURVEY), side(SURVEY)).isNothing()).isTrue();
    }

    @Test
    @DisplayName("names the fact that changed, the rules that it brought and took away, and the verdict")
    void tap() {
        Comparison comparison = Comparison.of(side(SURVEY), side(edited("cab-back-lower", "tap", List.of(Tap.DEAD))));
        assertThat(comparison.changed()).filteredOn(c -> !c.name().equals("cab-back-lower"))
                .as("what the shelf has left goes elsewhere").allMatch(c -> c.facts().isEmpty());
        assertThat(comparison.changed()).filteredOn(c -> c.name().equals("cab-back-lower")).singleElement().satisfies(c -> {
            assertThat(c.facts()).extracting(FactChange::key).containsExactly("tap");
            assertThat(c.facts().get(0).after()).isEqualTo("dead");
            assertThat(rules(c.nowSaid())).contains("diagnosis/dead-bay");
            assertThat(rules(c.nowQuiet())).contains("damping/ringing-bay");
            assertThat(c.before().verdict()).contains(Verdict.PATCH);
            assertThat(c.after().verdict()).contains(Verdict.LEAVE_BARE);
            assertThat(c.mass()).isNegative();
        });
        assertThat(comparison.mass()).isNegative();
    }

    @Test
    @DisplayName("tells what the layers do otherwise, on the panel and for the client's aims")
    void effects() {
        Comparison comparison = Comparison.of(side(SURVEY), side(edited("cab-back-lower", "tap", List.of(Tap.DEAD))));
        assertThat(comparison.changed().get(0).effects()).anySatisfy(e -> {
            assertThat(e.kind()).isEqualTo(EffectChange.Kind.QUIETER_BAY);
            assertThat(e.before().orElseThrow()).isGreaterThan(3);
            assertThat(e.after()).hasValue(0);
        });
        assertThat(comparison.changed().get(0).price()).isNegative();
        assertThat(comparison.aims()).allMatch(a -> SURVEY.aims().contains(a.aim())).anySatisfy(a ->
                assertThat(a.effects()).anySatisfy(e -> {
                    assertThat(e.kind()).isEqualTo(EffectChange.Kind.TAKEN);
                    assertThat(e.after().orElseThrow()).isLessThan(e.before().orElseThrow());
                }));
    }

    @Test
    @DisplayName("says of what was fitted as planned that it does what was planned, and of an open hole what it costs")
    void fitted() {
        Plan plan = Scenarios.plan("shell-pickup");
        Built sound = closedAsPlanned(plan);
        Side planned = Side.of("plan", plan);
        assertThat(Comparison.of(planned, fitted(plan, sound)).isNothing()).isTrue();
        Built open = Edit.with(sound, "panels", sound.panels().stream()
                .map(p -> Edit.with(p, "closed", Optional.of(List.of()))).toList());
        Comparison comparison = Comparison.of(planned, fitted(plan, open));
        assertThat(comparison.changed()).isNotEmpty().allMatch(c -> !c.isOutcome());
        assertThat(comparison.changed()).flatExtracting(PanelChange::effects)
                .filteredOn(e -> e.kind() == EffectChange.Kind.HELD_BACK).isNotEmpty()
                .allMatch(e -> e.after().orElseThrow() < e.before().orElseThrow());
    }

    /** The sound job, with no hole closed that nothing in the catalogue closes. */
    private static Built closedAsPlanned(Plan plan) {
        Built sound = SoundJob.of(plan);
        return Edit.with(sound, "panels", sound.panels().stream().map(p -> Edit.with(p, "closed",
                Optional.of(plan.panel(p.panel()).orElseThrow().treated().closed().stream().map(Place::part).toList())))
                .toList());
    }

    private static Side fitted(Plan plan, Built built) {
        return Side.of("job", Scenarios.AUDITOR.audit(plan, built), Scenarios.KNOWLEDGE);
    }

    @Test
    @DisplayName("tells a fact that changes nothing from one that does")
    void quiet() {
        Comparison comparison = Comparison.of(side(SURVEY), side(edited("bonnet", "note", "dented")));
        assertThat(comparison.changed()).singleElement().satisfies(c -> {
            assertThat(c.isOutcome()).isFalse();
            assertThat(c.facts()).containsExactly(new FactChange("note", "unknown", "dented"));
        });
    }

    @Test
    @DisplayName("names panels added and gone, and what changed of the vehicle")
    void panels() {
        List<PanelEntry> fewer = SURVEY.panels().subList(0, SURVEY.panels().size() - 1);
        Survey shorter = Edit.with(Edit.with(SURVEY, "panels", fewer), "limits", Optional.of(Edit.with(
                SURVEY.limits().orElseThrow(), "addedMass", Optional.of(new Quantity(40, Dimension.MASS)))));
        Comparison comparison = Comparison.of(side(SURVEY), side(shorter));
        assertThat(comparison.gone()).extracting(Side.PanelSide::name).containsExactly("bed-gate");
        assertThat(comparison.added()).isEmpty();
        assertThat(comparison.vehicle()).containsExactly(new FactChange("limits.added mass", "49.9 kg", "40 kg"));
        assertThat(Comparison.of(side(shorter), side(SURVEY)).added()).hasSize(1);
    }
}
