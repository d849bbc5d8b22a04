package unthrum.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("How well a panel radiates")
class RadiationEfficiencyTest {

    private static final double CRITICAL = RadiationEfficiency.critical(Sheet.steel(0.001).skin());

    /** f_c h = 12.3 to 12.7 Hz m for steel: Bies, Hansen and Howard, as in coincidence.csv; 12.0 by Cremer. */
    @Test
    @DisplayName("1 mm of steel is as fast as sound near 12 kHz")
    void critical() {
        assertThat(CRITICAL).isBetween(11_800.0, 12_700.0);
    }

    /** Wallace, J. Acoust. Soc. Am. 51 (1972) 946: 32 k² a b/π⁵ for the first mode of a small plate. */
    @ParameterizedTest
    @CsvSource({"0.6,0.4,20", "0.5,0.5,15", "0.9,0.5,12"})
    @DisplayName("at its first note like a small source, within 4 % of Wallace's first mode")
    void first(double a, double b, double frequency) {
        double wallace = 32 * Math.pow(2 * Math.PI * frequency / 343, 2) * a * b / Math.pow(Math.PI, 5);
        assertThat(RadiationEfficiency.of(frequency, CRITICAL, a, b)).isCloseTo(wallace, withinPercentage(4));
    }

    /** 1/√(1 − f_c/f) above coincidence: the same in every text (Cremer, Heckl and Ungar). */
    @Test
    @DisplayName("twice above coincidence by √2 more than a piston, near it no more than twice")
    void above() {
        assertThat(RadiationEfficiency.of(2 * CRITICAL, CRITICAL, 0.6, 0.4)).isCloseTo(Math.sqrt(2), withinPercentage(1e-6));
        assertThat(RadiationEfficiency.of(CRITICAL, CRITICAL, 0.6, 0.4)).isEqualTo(2);
    }

    /**
     * Maidanik, J. Acoust. Soc. Am. 34 (1962) 809, edges far below coincidence: σ = P λ_c √(f/f_c)/(π² S) with P the
     * perimeter; from memory.
     */
    @Test
    @DisplayName("between first note and coincidence by its edges")
    void edges() {
        double frequency = CRITICAL / 12;
        double maidanik = 2 * (0.9 + 0.6) * 343 / CRITICAL * Math.sqrt(1 / 12.0) / (Math.PI * Math.PI * 0.54);
        assertThat(RadiationEfficiency.of(frequency, CRITICAL, 0.9, 0.6)).isBetween(0.8 * maidanik, 1.6 * maidanik);
    }
}
