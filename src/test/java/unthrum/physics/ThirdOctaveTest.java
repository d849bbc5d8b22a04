package unthrum.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("Third-octave bands")
class ThirdOctaveTest {
    /** The weighting table is printed to 0.1 dB. */
    private static final double PRINTED_ROUNDING = 0.051;

    @Nested
    @DisplayName("A band")
    class Band {
        @ParameterizedTest(name = "{0}: {1} Hz")
        @CsvFileSource(resources = "third-octave.csv", numLinesToSkip = 1)
        @DisplayName("has the centre, edges and A-weighting of the standards")
        void agreesWithStandards(String id, double nominal, double weighting, double centre, double lower, double upper) {
            ThirdOctave band = ThirdOctave.of(nominal);

            assertThat(band.nominal()).isEqualTo(nominal);
            assertThat(band.aWeighting()).isCloseTo(weighting, within(PRINTED_ROUNDING));
            assertThat(band.centre()).isCloseTo(centre, within(6e-4));
            assertThat(band.lowerEdge()).isCloseTo(lower, within(6e-4));
            assertThat(band.upperEdge()).isCloseTo(upper, within(6e-4));
        }

        @Test
        @DisplayName("begins where the one below it ends")
        void bandsTouch() {
            ThirdOctave[] bands = ThirdOctave.values();
            for (int i = 1; i < bands.length; i++) {
                assertThat(bands[i].lowerEdge()).isCloseTo(bands[i - 1].upperEdge(), within(1e-6));
                assertThat(ThirdOctave.of(bands[i].lowerEdge() * 1.001)).isEqualTo(bands[i]);
            }
        }

        @Test
        @DisplayName("is told from 25 Hz to 5 kHz")
        void heard() {
            assertThat(ThirdOctave.HEARD).hasSize(24).startsWith(ThirdOctave.HZ_25).endsWith(ThirdOctave.HZ_5000);
        }

        @Test
        @DisplayName("is refused outside hearing")
        void outsideHearing() {
            assertThatThrownBy(() -> ThirdOctave.of(5)).hasMessageContaining("5.0 Hz");
            assertThatThrownBy(() -> ThirdOctave.of(30000)).hasMessageContaining("22.4 kHz");
            assertThatThrownBy(() -> ThirdOctave.of(-1)).isInstanceOf(IllegalArgumentException.class);
        }
    }
}
