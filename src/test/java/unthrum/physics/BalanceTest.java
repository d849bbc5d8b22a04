package unthrum.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Expected figures are worked by hand beside each check; statics needs no published table. */
@DisplayName("Added mass, its height and the payload")
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
    @DisplayName("40 kg of 520 kg payload is 7.7 %")
    void payload() {
        assertThat(Balance.shareOfPayload(40, 520)).isCloseTo(0.0769, within(1e-4));
        assertThatThrownBy(() -> Balance.shareOfPayload(40, 0)).hasMessageContaining("payload left is 0.0");
    }
}
