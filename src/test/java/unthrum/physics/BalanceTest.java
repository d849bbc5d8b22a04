package unthrum.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Expected figures are worked by hand beside each check; statics needs no published table. */
@DisplayName("Added mass, its height, the payload and a lid on struts")
class BalanceTest {

    @Test
    @DisplayName("6 kg on the floor at 0.5 m and 2 kg on the roof at 2.5 m sit at 1.0 m")
    void centre() {
        double[] masses = {6, 2};

        assertThat(Balance.total(masses)).isEqualTo(8);
        assertThat(Balance.centreHeight(masses, new double[] {0.5, 2.5}).orElseThrow())
                .isCloseTo((6 * 0.5 + 2 * 2.5) / 8, within(1e-12)).isCloseTo(1.0, within(1e-12));
        assertThat(Balance.centreHeight(new double[] {0}, new double[] {1})).isEmpty();
    }

    @Test
    @DisplayName("40 kg at 2.3 m lift the centre of a 2000 kg vehicle from 0.7 m by 31 mm")
    void shift() {
        // (2000 * 0.7 + 40 * 2.3) / 2040 = 1492 / 2040 = 0.73137
        assertThat(Balance.centreShift(2000, 0.7, 40, 2.3)).isCloseTo(0.03137, within(1e-5));
        assertThat(Balance.centreShift(2000, 0.7, 40, 0.4)).isNegative();
    }

    @Test
    @DisplayName("40 kg of 520 kg payload is 7.7 %")
    void payload() {
        assertThat(Balance.shareOfPayload(40, 520)).isCloseTo(0.0769, within(1e-4));
        assertThatThrownBy(() -> Balance.shareOfPayload(40, 0)).hasMessageContaining("payload left is 0.0");
    }

    @Test
    @DisplayName("3 kg at 0.4 m load a lid with 11.8 N·m: struts with 10 N·m in hand let it sink, with 15 they hold")
    void lid() {
        // 3 * 9.80665 * 0.4 = 11.768
        assertThat(Balance.lidMoment(3, 0.4)).isCloseTo(11.768, within(1e-3));
        assertThat(Balance.strutReserve(10, 3, 0.4)).isCloseTo(-1.768, within(1e-3));
        assertThat(Balance.strutReserve(15, 3, 0.4)).isPositive();
        assertThat(Balance.lidMoment(Balance.lidAllowance(10, 0.4).orElseThrow(), 0.4)).isCloseTo(10, within(1e-12));
        assertThat(Balance.lidAllowance(10, 0)).isEmpty();
    }
}
