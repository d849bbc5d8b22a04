package unthrum.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import unthrum.Scenarios;
import unthrum.facts.Caution;
import unthrum.facts.Caution.Danger;
import unthrum.facts.Duty.Work;
import unthrum.facts.Question;
import unthrum.plan.PanelWork;
import unthrum.plan.Plan;
import unthrum.reasoning.Verdict;
import unthrum.survey.SurveyReader;

@DisplayName("What nobody looked for")
class LookFirstTest {

    private static final JobPlanner PLANNER = new JobPlanner(Scenarios.KNOWLEDGE, StepTable.load(Scenarios.KNOWLEDGE));

    private static final String FLOOR = "panel: floor\n    zone: floor\n    size: [1300 mm, 620 mm]\n"
            + "    skin: {metal: steel, gauge: 0.9 mm}\n    shape: flat\n    ribs: none\n    clearance: 20 mm\n"
            + "    clearance to: carpet\n    heat: none\n    reach: open\n    wet: dry\n    near noise: road\n";

    private static JobCard card(String... keys) {
        String yaml = "survey: A van\nvehicle: {body: van, drive: petrol, use: daily}\naims: [road drumming]\npanels:\n  - "
                + FLOOR + "    " + String.join("\n    ", keys) + "\n";
        return PLANNER.card(Scenarios.PLANNER.plan(SurveyReader.read("van.yaml",
                new ByteArrayInputStream(yaml.getBytes(StandardCharsets.UTF_8)))));
    }

    private static Optional<Step> step(JobCard card, String kind) {
        return card.steps().stream().filter(s -> s.kind().step().equals(kind)).findFirst();
    }

    @Test
    @DisplayName("is asked for on the job card, before any tool is put to the vehicle")
    void onTheCard() {
        JobCard card = card("tap: rings", "behind: none", "surface: {old: none}");
        Step look = step(card, "look and measure").orElseThrow();
        assertThat(card.questions(look)).extracting(q -> ((Question) q.conclusion()).fact())
                .contains("covers", "fixings", "moving", "rust");
        int at = card.steps().indexOf(look);
        assertThat(card.steps()).filteredOn(s -> s.kind().stage().compareTo(Stage.CLEAN) >= 0 && s.kind().lays())
                .isNotEmpty().allSatisfy(s -> assertThat(card.waitsFor().get(card.steps().indexOf(s)).get(at)).isTrue());
    }

    @ParameterizedTest
    @ValueSource(strings = {"behind: none", "surface: {old: none}"})
    @DisplayName("behind the metal or on it makes the panel wait for the look, where layers are wanted")
    void waits(String onlyOne) {
        JobCard card = card("tap: rings", onlyOne);
        assertThat(card.plan().panels()).singleElement().satisfies(p -> {
            assertThat(p.verdict()).isEqualTo(Verdict.HOLD);
            assertThat(p.advice().holds().get(0).reasons()).extracting(r -> r.rule().id()).contains("safety/look-first");
        });
    }

    @Test
    @DisplayName("on a rusty panel keeps the grinder off it, though no layer is wanted there")
    void noGrinder() {
        JobCard blind = card("tap: dull", "surface: {rust: surface, paint: flaking, old: none}");
        assertThat(step(blind, "cure rust and paint")).isEmpty();
        assertThat(step(blind, "repair")).isEmpty();
        assertThat(step(blind, "decide on waiting panels").orElseThrow().asks()).extracting(PanelWork::work)
                .contains(Work.CURE_RUST, Work.REPAINT);
        JobCard looked = card("tap: dull", "behind: none", "surface: {rust: surface, paint: flaking, old: none}");
        assertThat(step(looked, "cure rust and paint").orElseThrow().cautions())
                .extracting(c -> ((Caution) c.conclusion()).danger()).contains(Danger.PAINT_DUST);
    }

    @Test
    @DisplayName("never puts a tool to rust that nobody saw")
    void unseenRust() {
        Plan plan = card("tap: rings", "behind: none", "surface: {old: none}").plan();
        assertThat(PanelWork.of(plan.panels().get(0))).extracting(PanelWork::work).doesNotContain(Work.CURE_RUST);
        assertThat(plan.panels().get(0).advice().questions())
                .extracting(q -> ((Question) q.conclusion()).fact()).contains("rust");
    }

    @Test
    @DisplayName("is not asked where an orange cable keeps hands away from the panel for good")
    void handsOff() {
        assertThat(card("tap: rings", "behind: [orange cable]").plan().panels().get(0).advice().questions()).isEmpty();
    }

    @Test
    @DisplayName("old pads of unknown make are shown with their caution, and waited for as long as a laboratory takes")
    void oldPads() {
        JobCard card = card("tap: rings", "behind: none", "surface: {rust: none, old: unknown pads}");
        Step test = step(card, "test old layers").orElseThrow();
        assertThat(test.cautions()).extracting(c -> ((Caution) c.conclusion()).danger())
                .isEqualTo(List.of(Danger.HAZARDOUS_PADS));
        assertThat(test.pauses()).allSatisfy(p -> assertThat(p.least().orElseThrow()).isGreaterThan(86_400));
        assertThat(Set.copyOf(test.tasks().stream().map(Task::panel).toList())).containsExactly("floor");
    }
}
