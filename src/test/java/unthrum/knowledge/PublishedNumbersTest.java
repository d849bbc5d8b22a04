package unthrum.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import unthrum.physics.CompositeLoss;

@DisplayName("Numbers of the rules against their sources")
class PublishedNumbersTest {

    private static final Knowledge KNOWLEDGE = Knowledge.load();

    @Test
    @DisplayName("interior material burns no faster than 102 mm/min (49 CFR 571.302, S4.3)")
    void burning() {
        assertThat(KNOWLEDGE.number("heat/burning-rate") * 1000 * 60).isCloseTo(102, within(1e-9));
    }

    @Test
    @DisplayName("acetone can be lit from -18 °C, closed cup (ICSC 0087, from memory)")
    void flashPoint() {
        assertThat(KNOWLEDGE.number("workshop/acetone-flash-point")).isCloseTo(-18, within(1e-9));
    }

    @Test
    @DisplayName("the open share at which a wall is tested for light caps it at 20 dB: 10 lg(1/0.01) (Bies and Hansen)")
    void openShare() {
        assertThat(CompositeLoss.ceiling(KNOWLEDGE.number("sealing/open-share"))).isCloseTo(20, within(1e-9));
    }

    @Test
    @DisplayName("one sheet is a twelfth of a pack that covers 1.8 m² (common practice)")
    void oneSheet() {
        assertThat(KNOWLEDGE.number("damping/one-sheet")).isCloseTo(1.8 / 12, within(1e-12));
    }

    @Test
    @DisplayName("the top of the drone: a four-stroke with four cylinders fires twice a turn, so 4500 rpm is 150 Hz")
    void drone() {
        assertThat(KNOWLEDGE.number("damping/drone-top")).isCloseTo(4500 / 60.0 * 2, within(1e-9));
    }
}
