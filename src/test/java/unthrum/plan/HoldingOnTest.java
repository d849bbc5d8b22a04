package unthrum.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import unthrum.Scenarios;
import unthrum.facts.Caution;
import unthrum.facts.Caution.Danger;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.survey.Face;
import unthrum.survey.SurveyReader;
import unthrum.survey.Zone;

/** Facts of the trade: common practice, no source. */
@DisplayName("Each layer is held where it is")
class HoldingOnTest {

    private static final List<Zone> HANGING = List.of(Zone.ROOF, Zone.SIDE, Zone.PILLAR, Zone.DOOR, Zone.SLIDING_DOOR,
            Zone.REAR_DOOR, Zone.TAILGATE, Zone.CAB_BACK, Zone.BULKHEAD, Zone.BONNET, Zone.BOOT_LID);

    private static Plan plan(String aim, String panel) {
        String yaml = "survey: A van\nvehicle: {body: van, drive: petrol, use: daily, payload left: 300 kg}\naims: [" + aim
                + "]\npanels:\n  - panel: one\n    skin: {metal: steel, gauge: 0.8 mm}\n    size: [900 mm, 600 mm]\n"
                + "    shape: flat\n    ribs: none\n    fixings: none\n    moving: none\n    covers: none\n    behind: none\n"
                + "    missing: none\n    wet: dry\n    surface: {paint: sound, dirt: clean, rust: none, old: none}\n"
                + panel.indent(4);
        return Scenarios.PLANNER.plan(SurveyReader.read("van.yaml",
                new ByteArrayInputStream(yaml.getBytes(StandardCharsets.UTF_8))));
    }

    private static PlannedPanel one(Plan plan) {
        return plan.panels().get(0);
    }

    static List<String> scenarios() {
        return Scenarios.names();
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("no foam, barrier or insulation lies loose on what hangs or stands")
    void heldUpright(String scenario) {
        assertThat(Scenarios.plan(scenario).panels()).filteredOn(p -> HANGING.contains(p.advice().panel().facts()
                .the(unthrum.facts.Panel.class).zone())).isNotEmpty().allSatisfy(p -> assertThat(p.layup().layers())
                .filteredOn(l -> l.layer() != Layer.ABSORBER)
                .noneMatch(l -> l.material().bonding() == Material.Bonding.LOOSE));
    }

    @Nested
    @DisplayName("in a door, behind the glass")
    class Door {
        private static final String DOOR = """
                zone: door
                tap: rings
                clearance: 30 mm
                clearance to: %s
                heat: {from: sun, peak: 70 degC}
                reach: open
                openings: [{kind: service opening, size: 200 mm, count: 2, state: open}]
                near ear: yes
                near noise: road
                """;

        @Test
        @DisplayName("the skin is damped and carries no barrier; each service opening gets a piece that peels off")
        void openings() {
            PlannedPanel door = one(plan("road drumming", DOOR.formatted("window glass")));
            assertThat(door.advice().panel().facts().the(unthrum.facts.Room.class).to()).isEqualTo(Face.WINDOW_GLASS);
            assertThat(door.layup().layers()).extracting(l -> l.layer()).containsExactly(Layer.DAMPING);
            assertThat(door.closings()).singleElement().satisfies(c -> {
                assertThat(c.count()).isEqualTo(2);
                assertThat(c.piece().orElseThrow().removable()).isTrue();
                assertThat(c.piece().orElseThrow().surfaceDensity().si()).isGreaterThan(3);
            });
            assertThat(door.treated().closed()).hasSize(1);
        }
    }

    @Nested
    @DisplayName("on a hot bulkhead")
    class Hot {
        private static final String WALL = """
                zone: bulkhead
                tap: rings
                clearance: 30 mm
                clearance to: trim
                heat: {from: %s, peak: %s}
                reach: part
                reachable: 60 %%
                openings: [{kind: %s, size: %s, state: open}]
                near noise: engine
                """;

        @Test
        @DisplayName("the shield covers the whole hot side, however little of the inner side a hand reaches")
        void shield() {
            PlannedPanel wall = one(plan("engine noise", WALL.formatted("turbo", "135 degC", "tooling hole", "20 mm")));
            assertThat(wall.layup().of(Layer.HEAT_SHIELD).orElseThrow().patches()).singleElement()
                    .satisfies(p -> assertThat(p.coverage()).isEqualTo(1));
        }

        @ParameterizedTest(name = "a {0} of {1} at {2} is closed with {3}")
        @CsvSource({"cable hole, 20 mm, 80 degC, grommet-25", "cable hole, 80 mm, 80 degC, none",
            "tooling hole, 20 mm, 80 degC, plug-20", "tooling hole, 80 mm, 70 degC, cover-plate-1",
            "tooling hole, 80 mm, 135 degC, cover-plate-1-hot", "empty grommet hole, 80 mm, 100 degC, cover-plate-1-hot"})
        @DisplayName("a hole gets a piece made for such a hole, that bears the heat with its bed and all")
        void piece(String kind, String size, String peak, String piece) {
            PlannedPanel wall = one(plan("engine noise", WALL.formatted("engine", peak, kind, size)));
            assertThat(wall.closings()).singleElement().satisfies(c -> assertThat(c.piece().map(Material::material))
                    .isEqualTo(Optional.of(piece).filter(p -> !p.equals("none"))));
        }

        @Test
        @DisplayName("where only a shield hangs, nothing is washed, wiped, rolled or carried that belongs to other layers")
        void nothingStuck() {
            Plan plan = plan("engine noise", WALL.formatted("turbo", "135 degC", "tooling hole", "20 mm"));
            assertThat(one(plan).layup().layers()).extracting(l -> l.layer()).containsExactly(Layer.HEAT_SHIELD);
            assertThat(PanelWork.of(one(plan)).stream().flatMap(d -> d.reasons().stream()).map(r -> r.rule().subject()))
                    .isNotEmpty().doesNotContain("preparation", "damping", "barrier", "decoupling");
            assertThat(plan.cautions()).extracting(c -> ((Caution) c.conclusion()).danger())
                    .contains(Danger.SHARP_EDGES).doesNotContain(Danger.SOLVENT_VAPOUR, Danger.HEAVY_LIFTING);
        }
    }
}
