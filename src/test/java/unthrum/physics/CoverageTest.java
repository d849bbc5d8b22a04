package unthrum.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import unthrum.physics.ReferenceTable.Row;

@DisplayName("How much of the ringing a patch in the middle reaches")
class CoverageTest {

    private static final Skin STEEL = Sheet.steel(0.001).skin();

    static Stream<Row> table() {
        return ReferenceTable.rows("coverage.csv").stream();
    }

    private static Coverage coverage(Bay bay, Support support) {
        return Coverage.of(STEEL, bay, support).value();
    }

    private static Support support(Row row) {
        return row.text("boundary").equals("CCCC") ? Support.CLAMPED_SLIDING : Support.HINGED_SLIDING;
    }

    @ParameterizedTest
    @MethodSource("table")
    @DisplayName("within 0.005 of finite elements and of a converged Ritz solution")
    void share(Row row) {
        double share = coverage(Bay.flat(row.number("aspect"), 1), support(row))
                .share(row.number("area_pct") / 100);
        assertThat(share).isCloseTo(row.number("frac_ritz"), within(0.005));
        if (row.has("frac_fe")) {
            assertThat(share).isCloseTo(row.number("frac_fe"), within(0.005));
        }
    }

    /** Closed form for hinged edges (strain energy of one sine each way), derived for this project. */
    @ParameterizedTest
    @CsvSource({"1,0.5,0.67161", "1,0.25,0.44681"})
    @DisplayName("half the bay holds two thirds of the energy, a quarter nearly half")
    void square(double aspect, double area, double share) {
        assertThat(coverage(Bay.flat(aspect, 1), Support.HINGED_SLIDING).share(area)).isCloseTo(share, within(5e-4));
    }

    /** Beam: share = c + sin(πc)/π; a bay far longer than wide bends like one across its width. */
    @ParameterizedTest
    @CsvSource({"0.25,0.475079", "0.5,0.818310", "0.75,0.975079"})
    @DisplayName("a strip along a long bay works as on a beam")
    void beam(double covered, double share) {
        assertThat(coverage(Bay.flat(12, 1), Support.HINGED_SLIDING).patch(1, covered)).isCloseTo(share, within(0.01));
    }

    @Test
    @DisplayName("past the knee each piece does less than an average one, and it lies well short of the whole bay")
    void knee() {
        for (Support support : Support.values()) {
            Coverage coverage = coverage(Bay.flat(1.5, 1), support);
            double knee = coverage.knee();
            assertThat(knee).isBetween(0.15, 0.5);
            assertThat(coverage.share(knee + 0.02) - coverage.share(knee)).isLessThan(0.02);
            assertThat(coverage.share(knee) - coverage.share(knee - 0.02)).isGreaterThanOrEqualTo(0.02);
        }
    }

    @Test
    @DisplayName("an effect that always pays has no knee")
    void noKnee() {
        assertThat(Coverage.knee(covered -> 3 * covered, 1)).isEqualTo(1);
    }

    @Test
    @DisplayName("a bay outside the theory's range has no coverage either")
    void outside() {
        assertThat(Coverage.of(STEEL, Bay.flat(0.005, 1), Support.HINGED_SLIDING).isWithin()).isFalse();
    }
}
