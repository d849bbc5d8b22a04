package unthrum.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Holes and bare patches beside a barrier")
class CompositeLossTest {

    @ParameterizedTest(name = "{0}: {2} dB beside {4} dB")
    @CsvFileSource(resources = "composite.csv", numLinesToSkip = 1)
    @DisplayName("two areas together give the published figures")
    void published(String id, double area1, double loss1, double area2, double loss2, double expected, double tolerance) {
        assertThat(CompositeLoss.of(new double[] {area1, area2}, new double[] {loss1, loss2}))
                .isCloseTo(expected, within(tolerance));
        assertThat(CompositeLoss.covered(loss1, loss2, area1 / (area1 + area2))).isCloseTo(expected, within(tolerance));
    }

    @ParameterizedTest(name = "{0} open: at most {1} dB")
    @CsvSource({"0.001, 30.00", "0.005, 23.01", "0.01, 20.00", "0.02, 16.99", "0.05, 13.01"})
    @DisplayName("an open share caps every wall (reference table, topic 4: -10 lg s)")
    void ceiling(double share, double expected) {
        assertThat(CompositeLoss.ceiling(share)).isCloseTo(expected, within(0.005));
        assertThat(CompositeLoss.withOpening(200, share)).isCloseTo(expected, within(0.005));
    }

    @Test
    @DisplayName("without a hole nothing is capped and nothing is lost")
    void noHole() {
        assertThat(CompositeLoss.ceiling(0)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(CompositeLoss.leakCost(37, 0)).isCloseTo(0, within(1e-12));
        assertThat(CompositeLoss.ceiling(1)).isZero();
    }

    @Test
    @DisplayName("one per cent open costs a 50 dB door 30.0 dB (Crocker and Arenas 12.16)")
    void leak() {
        assertThat(CompositeLoss.leakCost(50, 0.01)).isCloseTo(50 - 20.0, within(0.05));
        // 30 dB panel: 16.782 dB at 2 % open, 26.992 dB at 0.1 % (T4-C07, T4-C05)
        assertThat(CompositeLoss.withOpening(30, 0.001) - CompositeLoss.withOpening(30, 0.02))
                .isCloseTo(26.992 - 16.782, within(2e-3));
    }

    @Test
    @DisplayName("the weakest path is the one that lets most through, not the one with the least decibels")
    void weakest() {
        double[] areas = {2.0, 0.001, 0.0001};
        double[] losses = {25, 0, 0};

        assertThat(CompositeLoss.weakest(areas, losses)).isZero(); // 0.0063 against 0.0010 m² of open area
        assertThat(CompositeLoss.weakest(areas, new double[] {35, 0, 0})).isEqualTo(1);
    }

    @Test
    @DisplayName("nonsense is refused by name")
    void nonsense() {
        assertThatThrownBy(() -> CompositeLoss.withOpening(30, 1.2)).hasMessageContaining("1.2").hasMessageContaining("between 0 and 1");
        assertThatThrownBy(() -> CompositeLoss.of(new double[] {1}, new double[] {1, 2})).hasMessageContaining("as many");
        assertThatThrownBy(() -> CompositeLoss.of(new double[] {}, new double[] {})).hasMessageContaining("total area");
    }
}
