package unthrum.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import unthrum.Scenarios;
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;

@DisplayName("A plan as text")
class PlanTextTest {

    private static final Pattern COLOUR = Pattern.compile("\u001b\\[[0-9;]*m");

    static List<Path> scenarios() {
        return Scenarios.files();
    }

    @Test
    @DisplayName("reads as it was read over by eye; what differs is written to target for comparison")
    void golden() throws IOException {
        String now = PlanText.of(Scenarios.plan("shell-pickup"), List.of(), 80, Style.PLAIN);
        Path reviewed = Path.of("src/test/resources/unthrum/report/shell-pickup.txt");
        Files.writeString(Path.of("target/shell-pickup.txt"), now);
        assertThat(now).isEqualTo(Files.readString(reviewed));
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("never runs past its width, at 80 and at 120 columns")
    void width(Path file) {
        for (int width : new int[] {80, 120}) {
            assertThat(PlanText.of(Scenarios.plan(file), List.of(), width, Style.PLAIN).lines())
                    .allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(width));
        }
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("says the same with colour as without")
    void colour(Path file) {
        Plan plan = Scenarios.plan(file);
        String coloured = PlanText.of(plan, List.of(), 80, new Style(true, true));
        assertThat(coloured).contains("\u001b[");
        assertThat(COLOUR.matcher(coloured).replaceAll("")).isEqualTo(PlanText.of(plan, List.of(), 80, Style.PLAIN));
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("needs nothing but ASCII where the terminal has nothing else")
    void ascii(Path file) {
        String ascii = PlanText.of(Scenarios.plan(file), List.of(), 80, Style.of(false, StandardCharsets.US_ASCII));
        assertThat(ascii).isASCII().doesNotContain("?");
        assertThat(ascii).contains("degC");
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("has no mark of a program in its sentences")
    void speech(Path file) {
        Plan plan = Scenarios.plan(file);
        StringBuilder all = new StringBuilder(PlanText.of(plan, List.of(), 100, Style.PLAIN));
        for (PlannedPanel panel : plan.panels()) {
            all.append(CaseText.of(panel, Optional.empty(), true, Scenarios.KNOWLEDGE, 100, Style.PLAIN));
        }
        assertThat(all.toString()).doesNotContain("null").doesNotContain("NaN").doesNotContain("{")
                .doesNotContain("Optional").doesNotContain(" a a").doesNotContain("the the").doesNotContain("..")
                .doesNotContain("  ,").doesNotContainPattern("[A-Z]_[A-Z]").doesNotContainPattern("\\d\\.\\d{4}");
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("names every panel and every material laid")
    void complete(Path file) {
        Plan plan = Scenarios.plan(file);
        String text = PlanText.of(plan, List.of(), 120, Style.PLAIN);
        assertThat(plan.panels()).allSatisfy(p -> assertThat(text).contains("\n" + p.name() + ": "));
        assertThat(plan.panels().stream().flatMap(p -> p.layup().layers().stream()))
                .allSatisfy(laid -> assertThat(text).contains(laid.material().material()));
    }

    @Test
    @DisplayName("shows one panel alone when asked")
    void one() {
        String text = PlanText.of(Scenarios.plan("one-pack-hatchback"), List.of("tunnel"), 80, Style.PLAIN);
        assertThat(text).contains("\ntunnel: ").doesNotContain("\nroof-front: ").doesNotContain("Shopping");
    }
}
