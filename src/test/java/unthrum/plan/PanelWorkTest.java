package unthrum.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import unthrum.material.Layer;
import unthrum.pieces.Bench;
import unthrum.effect.Layup;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.engine.Judgement;

@DisplayName("The work on a panel, by what is laid on it in the end")
class PanelWorkTest {

    private static final String[] READY = {"ribs: none", "tap: rings", "clearance: 60 mm", "clearance to: trim",
        "reach: open", "near noise: engine", "near ear: yes", "wet: dry", "fixings: none",
        "surface: {paint: sound, dirt: dust, rust: none, old: none}"};

    private static String panel(String... keys) {
        return Bench.panel("wall", 900, 600, READY).replace("zone: floor", "zone: bulkhead")
                + String.join("", List.of(keys).stream().map(k -> "    " + k + "\n").toList());
    }

    private static Set<String> rules(Plan plan) {
        return PanelWork.of(plan.panels().get(0)).stream().flatMap(d -> d.reasons().stream()).map(r -> r.rule().id())
                .collect(Collectors.toSet());
    }

    private static Set<String> rules(String material, String... keys) {
        return rules(Bench.with(material, 0.5, panel(keys)));
    }

    private static Set<String> bare(String... keys) {
        Plan plan = Bench.with("butyl-2", 0.5, panel(keys));
        PlannedPanel wall = plan.panels().get(0);
        return rules(new Plan(plan.survey(), plan.vehicle(), plan.forAll(),
                List.of(new PlannedPanel(wall.advice(), Layup.NOTHING, List.of())), plan.shopping(), plan.totals(),
                plan.shares(), plan.effects()));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"vinyl-barrier-2-bonded, true", "butyl-2-hot, false", "nitrile-foam-10-hot, false"})
    @DisplayName("asks for hot adhesive in a hot place only where contact adhesive holds the layer")
    void hotAdhesive(String material, boolean asked) {
        assertThat(rules(material, "openings: none", "heat: {from: engine, peak: 75 degC}").contains("proof/hot-adhesive"))
                .isEqualTo(asked);
    }

    @Test
    @DisplayName("asks for a blocked drain to be opened, layer or none")
    void blockedDrain() {
        String[] keys = {"openings: [{kind: drain, size: 10 mm, state: closed}]", "heat: none"};
        assertThat(bare(keys)).contains("sealing/blocked-drain");
        assertThat(rules("butyl-2", keys)).contains("sealing/blocked-drain");
    }

    @Test
    @DisplayName("asks for no hole to be closed where nothing may be touched")
    void highVoltage() {
        String[] keys = {"openings: [{kind: cable hole, size: 20 mm, state: open}]", "heat: none"};
        assertThat(bare(keys)).contains("sealing/close-first");
        String[] live = {keys[0], keys[1], "behind: [orange cable]"};
        assertThat(bare(live)).doesNotContain("sealing/close-first");
    }

    @Test
    @DisplayName("closes a hole where no layer has room, since its piece lies in the metal")
    void noRoom() {
        PanelAdvice cramped = Bench.with("butyl-2", 0.5,
                panel("openings: [{kind: cable hole, size: 20 mm, state: open}]", "heat: none")
                        .replace("clearance: 60 mm", "clearance: 1 mm")).panels().get(0).advice();
        assertThat(cramped.outvoted()).isNotEmpty().noneMatch(w -> w.layer() == Layer.SEAL);
        assertThat(cramped.closings()).hasSize(1);
        assertThat(PanelWork.of(new PlannedPanel(cramped, Layup.NOTHING, List.of())))
                .flatMap(Judgement::reasons).extracting(r -> r.rule().id()).contains("sealing/close-first");
    }

    @Nested
    @DisplayName("of a leaky wall with a service opening and a hatch")
    class Leaky {

        private static final String[] KEYS = {"heat: none", "openings: [{kind: tooling hole, size: 90 mm, count: 2, "
                + "state: open, must stay open: yes}, {kind: service opening, size: 300 mm, state: open}]",
            "covers: [{kind: pump hatch, size: [100 mm, 100 mm]}]"};

        @Test
        @DisplayName("asks for lamp, peeling cover and a word to the owner where the barrier is laid")
        void withBarrier() {
            assertThat(rules("vinyl-barrier-2", KEYS)).contains("sealing/capped-wall", "sealing/service-opening",
                    "proof/tell-owner-covers");
        }

        @Test
        @DisplayName("asks for neither lamp nor peeling cover where only damping is laid")
        void withDamping() {
            assertThat(rules("butyl-2", KEYS)).contains("proof/tell-owner-covers")
                    .doesNotContain("sealing/capped-wall");
        }

        @Test
        @DisplayName("asks for none of them where nothing is laid")
        void bareWall() {
            assertThat(bare(KEYS)).doesNotContain("sealing/capped-wall",
                    "proof/tell-owner-covers");
        }
    }
}
