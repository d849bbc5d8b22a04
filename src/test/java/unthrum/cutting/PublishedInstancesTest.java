package unthrum.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Published instances: see SOURCES.md beside the data. Budgets are steps, so the outcome is the same everywhere. */
@DisplayName("On published instances the planner")
class PublishedInstancesTest {

    private static final Path DATA = Path.of("src/test/resources/unthrum/cutting");

    static Stream<Named<PublishedInstance>> sheets() {
        return read("sheets.csv");
    }

    static Stream<Named<PublishedInstance>> rolls() {
        return read("rolls.csv");
    }

    private static Stream<Named<PublishedInstance>> read(String file) {
        return PublishedInstance.read(DATA.resolve(file)).stream()
            .map(i -> Named.of(i.name() + " " + i.variant(), i));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    @DisplayName("reaches the best known number of sheets, with a bound that is not above it")
    void sheets(PublishedInstance instance) {
        CuttingLayout layout = LayoutPlanner.plan(instance.task(), Search.ofSteps(1, 50_000));
        assertThat(LayoutCheck.faults(layout)).isEmpty();
        assertThat(layout.wholeSheets()).isEqualTo(instance.bestKnown());
        assertThat(layout.bound()).isLessThanOrEqualTo(instance.bestKnown());
    }

    @ParameterizedTest
    @MethodSource("rolls")
    @DisplayName("comes within one part in twenty of the known least length of roll, with a bound that is not above it")
    void rolls(PublishedInstance instance) {
        CuttingLayout layout = LayoutPlanner.plan(instance.task(), Search.ofSteps(1, 5000));
        assertThat(LayoutCheck.faults(layout)).isEmpty();
        assertThat((double) layout.rollLength() / instance.bestKnown()).isBetween(1.0, 1.05);
        assertThat(layout.bound()).isLessThanOrEqualTo(instance.bestKnown());
    }
}
