package unthrum.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import unthrum.Scenarios;
import unthrum.effect.AimGain;
import unthrum.effect.PanelEffect;
import unthrum.report.PlanText;
import unthrum.report.Style;

@DisplayName("A plan shows what it does")
class PlanEffectsTest {

    static Stream<String> scenarios() {
        return Stream.of("sleeper-city-van", "shell-pickup");
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("every panel in order, and the same mass as its totals")
    void consistent(String scenario) {
        Plan plan = Scenarios.plan(scenario);
        assertThat(plan.effects().panels()).extracting(PanelEffect::panel)
                .isEqualTo(plan.panels().stream().map(PlannedPanel::name).toList());
        // the totals count each quarter of a patch in whole grams, rounded up
        assertThat(plan.effects().vehicle().load().mass()).isLessThanOrEqualTo(plan.totals().mass())
                .isCloseTo(plan.totals().mass(), offset(0.1));
        assertThat(plan.effects().vehicle().gains()).extracting(AimGain::aim).isEqualTo(plan.survey().aims());
        assertThat(plan.effects().vehicle().gains()).allSatisfy(g -> assertThat(g.gains()).isNotEmpty());
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("nothing changes on a panel that gets nothing")
    void unchanged(String scenario) {
        Plan plan = Scenarios.plan(scenario);
        List<PlannedPanel> bare = plan.panels().stream()
                .filter(p -> p.layup().isEmpty() && p.treated().closed().isEmpty()).toList();
        assertThat(bare).isNotEmpty().allSatisfy(p -> {
            PanelEffect effect = plan.effects().panel(p.name()).orElseThrow();
            assertThat(effect.mass().mass()).isZero();
            assertThat(effect.bays()).noneMatch(b -> b.treated());
            assertThat(effect.blocking()).filteredOn(b -> b.losses().isWithin())
                    .allSatisfy(b -> assertThat(b.losses().value().gain()).isCloseTo(0, offset(1e-9)));
        });
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("no layer of a plan is hotter at the peak of its place than it bears")
    void bears(String scenario) {
        assertThat(Scenarios.plan(scenario).effects().panels().stream().flatMap(p -> p.heat().atPeak().stream()))
                .isNotEmpty().allSatisfy(h -> assertThat(h.margin()).as(h.toString()).isNotNegative());
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("in words: each aim, where the next money goes, and no promise of a level in the cabin")
    void words(String scenario) {
        Plan plan = Scenarios.plan(scenario);
        String text = PlanText.of(plan, List.of(), 100, Style.PLAIN);
        String brings = text.substring(text.indexOf("What it brings"), text.indexOf("Shopping and totals"))
                .replaceAll("\\s+", " ");
        assertThat(brings).contains(plan.effects().vehicle().next().get(0).panel() + " now gives").contains("none of this is a level in the cabin").contains("about").doesNotContain("NaN");
        plan.survey().aims().forEach(aim -> assertThat(brings).contains(unthrum.reading.Words.of(aim)));
        assertThat(text).contains("  effect ");
    }
}
