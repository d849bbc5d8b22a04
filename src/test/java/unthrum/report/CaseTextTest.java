package unthrum.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import unthrum.Scenarios;
import unthrum.material.Layer;
import unthrum.pieces.Bench;
import unthrum.plan.PlannedPanel;
import unthrum.reasoning.engine.Reason;

@DisplayName("A case as text")
class CaseTextTest {

    private static final PlannedPanel PANEL = Scenarios.plan("travelling-bicycle-workshop").panel("tunnel-front")
            .orElseThrow();

    private static final Set<String> COMPARING =
            Set.of("tell/alike", "tell/alike-part", "worth/kilogram", "worth/money", "worth/panel");

    private static String text(Optional<Layer> layer, boolean teach) {
        return CaseText.of(PANEL, layer, teach, Scenarios.KNOWLEDGE, 400, Style.PLAIN);
    }

    @Test
    @DisplayName("names every rule that spoke on the panel, with its source")
    void everyRule() {
        String text = text(Optional.empty(), false);
        assertThat(PANEL.advice().panel().judgements().stream().flatMap(j -> j.reasons().stream()).map(Reason::rule))
                .isNotEmpty().allSatisfy(rule -> assertThat(text).contains("[" + rule.id() + "]")
                        .contains("Source: " + Scenarios.KNOWLEDGE.sourceTitle(rule.source())));
    }

    @Test
    @DisplayName("tells the fate of every material compared")
    void everyMaterial() {
        String text = text(Optional.empty(), false);
        assertThat(PANEL.advice().considered()).isNotEmpty().allSatisfy(c -> assertThat(text)
                .containsPattern("\n  " + java.util.regex.Pattern.quote(c.material().material())
                        + " +(Chosen|Rejected|Inside|Fits)"));
    }

    @Test
    @DisplayName("says once what was tried for each number it rests on that nobody published, and of no other number")
    void tried() {
        String text = text(Optional.empty(), false);
        String told = text.substring(text.indexOf("Numbers that nobody published"));
        assertThat(Scenarios.KNOWLEDGE.thresholds()).allSatisfy(t -> {
            boolean looked = text.contains("threshold " + t.threshold() + " ") || COMPARING.contains(t.threshold());
            String line = "\n  " + t.threshold() + " ";
            if (looked && t.tried().isPresent()) {
                assertThat(told.split(line, -1)).as(t.threshold()).hasSize(2);
                assertThat(told).contains("; tried " + t.tried().orElseThrow() + ").\n");
            } else {
                assertThat(told).doesNotContain(line);
            }
        });
    }

    @Test
    @DisplayName("teaches only when asked")
    void teaches() {
        assertThat(text(Optional.empty(), true)).contains("Why it is so: ");
        assertThat(text(Optional.empty(), false)).doesNotContain("Why it is so: ");
    }

    @Test
    @DisplayName("keeps to one layer when asked")
    void oneLayer() {
        String text = text(Optional.of(Layer.BARRIER), false);
        assertThat(text).contains("For a barrier").contains("rubber-barrier-2.5-hot")
                .doesNotContain("For insulation").doesNotContain("glass-felt-6  ");
    }

    @Test
    @DisplayName("says what was chosen and is left out for want of money, and keeps its work apart")
    void leftOut() {
        PlannedPanel poor = Bench.advised("limits: {money: 60 EUR}\n", Bench.panel("floor", 1300, 620,
                "skin: {metal: steel, gauge: 0.9 mm}", "ribs: none", "tap: rings", "clearance: 20 mm",
                "clearance to: carpet", "heat: none", "reach: open", "behind: none", "near noise: road", "wet: dry",
                "surface: {paint: sound, dirt: clean, rust: none, old: none}")).panels().get(0);
        String material = poor.leftOut().get(0).material().material();
        String text = CaseText.of(poor, Optional.empty(), false, Scenarios.KNOWLEDGE, 400, Style.PLAIN);
        assertThat(text).contains("Left out, though chosen. For want of money: ")
                .containsPattern(material + " +Chosen, and left out for want of money\\.")
                .contains("Would come with layers that are not laid");
    }
}
