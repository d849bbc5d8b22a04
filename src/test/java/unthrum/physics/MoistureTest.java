package unthrum.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import unthrum.physics.Condensation.Season;
import unthrum.physics.HeatLayer.Solid;

@DisplayName("Water in the air and on the panel")
class MoistureTest {
    private static final Solid SKIN = new Solid(0.0008, 50);

    private static HeatFlow foamed(double foam, double outside, double inside, double innerSurface) {
        return HeatFlow.through(List.of(SKIN, new Solid(foam, 0.036)), HeatDirection.HORIZONTAL, outside, inside,
                HeatDirection.OUTER_SURFACE, innerSurface).orElseThrow();
    }

    @Nested
    @DisplayName("Vapour")
    class Vapour {
        @ParameterizedTest(name = "{0}: {2} Pa at {1} °C")
        @CsvFileSource(resources = "saturation-pressure.csv", numLinesToSkip = 1)
        @DisplayName("saturates at the published pressure")
        void saturation(String id, double celsius, double expected, double tolerance) {
            assertThat(Moisture.saturationPressure(celsius))
                    .isCloseTo(expected, Percentage.withPercentage(tolerance));
        }

        @ParameterizedTest(name = "{0}: {1} °C, humidity {2}")
        @CsvFileSource(resources = "dew-point.csv", numLinesToSkip = 1)
        @DisplayName("condenses at the published dew point")
        void dewPoint(String id, double celsius, double humidity, double expected, double tolerance) {
            assertThat(Moisture.dewPoint(celsius, humidity).orElseThrow()).isCloseTo(expected, within(tolerance));
        }

        @Test
        @DisplayName("is outside the range of the formula in frost below -40 °C, on a hot roof and in bone-dry air")
        void outsideItsRange() {
            assertThat(Moisture.dewPoint(-41, 0.5)).isEmpty();
            assertThat(Moisture.dewPoint(80, 0.5)).isEmpty();
            assertThat(Moisture.dewPoint(20, 0)).isEmpty();
            assertThat(Moisture.dewPoint(-39, 0.2)).isEmpty();
        }

        @Test
        @DisplayName("in per cent instead of a share is refused")
        void nonsense() {
            assertThatThrownBy(() -> Moisture.dewPoint(20, 65)).hasMessageContaining("relative humidity is 65.0");
        }
    }

    @Nested
    @DisplayName("The inner face")
    class InnerFace {
        @ParameterizedTest(name = "{0}: {1} m of foam")
        @CsvFileSource(resources = "temperature-factor.csv", numLinesToSkip = 1)
        @DisplayName("has the published temperature factor")
        void factor(String id, double foam, double innerSurface, double expected) {
            double face = UsualSurfaces.innerFace(foamed(foam, -10, 20, innerSurface));

            assertThat(Moisture.temperatureFactor(face, -10, 20).orElseThrow()).isCloseTo(expected, within(1e-4));
        }

        @Test
        @DisplayName("at 14.4 °C between 0 and 20 °C has the factor 0.72 (EN ISO 13788 definition, T8-F01)")
        void definition() {
            assertThat(Moisture.temperatureFactor(14.4, 0, 20).orElseThrow()).isCloseTo(0.72, within(1e-12));
            assertThat(Moisture.temperatureFactor(14.4, 20, 20)).isEmpty();
        }

        @Test
        @DisplayName("stays at the dew point of 20 °C, 50 % in -10 °C with 6.95 mm of foam (T8-F08): 6.9 is wet, 7.0 dry")
        void justDry() {
            double dewPoint = Moisture.dewPoint(20, 0.5).orElseThrow();

            assertThat(UsualSurfaces.innerFace(foamed(0.00695, -10, 20, 0.13))).isCloseTo(dewPoint, within(0.02));
            assertThat(UsualSurfaces.innerFace(foamed(0.0069, -10, 20, 0.13))).isLessThan(dewPoint);
            assertThat(UsualSurfaces.innerFace(foamed(0.0070, -10, 20, 0.13))).isGreaterThan(dewPoint);
        }
    }

    @Nested
    @DisplayName("Wet hours")
    class WetHours {
        @ParameterizedTest(name = "Φ({0}) = {1}")
        @CsvSource({"-3, 0.0013499", "-2.326348, 0.01", "-1, 0.1586553", "0, 0.5", "0.6744898, 0.75", "1.959964, 0.975",
            "3, 0.9986501"})
        @DisplayName("rest on the tabled normal distribution (Abramowitz and Stegun, table 26.1)")
        void normal(double z, double expected) {
            assertThat(Condensation.normal(z)).isCloseTo(expected, within(2e-7));
        }

        @Test
        @DisplayName("a face a tenth of a kelvin under the dew point is wet as likely as not, not surely")
        void graded() {
            assertThat(Condensation.likelihood(0.1, 1.8)).isBetween(0.5, 0.53);
            assertThat(Condensation.likelihood(8, 1.8)).isGreaterThan(0.9999);
            assertThat(Condensation.likelihood(-8, 1.8)).isLessThan(1e-4);
        }

        /**
         * The air outside counted hour by hour on a fine grid over its normal spread, each with its own steady
         * face temperature; independent of the closed form.
         */
        @ParameterizedTest(name = "fall {0}, {1} ± {2} °C outside, dew point {3} °C")
        @CsvSource({"0.77, -1, 6, 12, 1.8", "0.29, -1, 6, 12, 1.8", "0.77, 8, 6, 9.26, 1", "0.5, -10, 3, 5, 0.5"})
        @DisplayName("are those counted hour by hour")
        void counted(double fall, double mean, double width, double dewPoint, double spread) {
            double wet = 0;
            double all = 0;
            for (double z = -5; z <= 5; z += 0.05) {
                for (double e = -5; e <= 5; e += 0.05) {
                    double weight = Math.exp(-(z * z + e * e) / 2);
                    double face = 20 - fall * (20 - (mean + z * width)) + e * spread;
                    wet += face < dewPoint ? weight : 0;
                    all += weight;
                }
            }
            assertThat(Condensation.hours(fall, new Season(mean, width), 20, dewPoint, spread))
                    .isCloseTo(wet / all, within(0.005));
        }

        @Test
        @DisplayName("behind a fall above one are refused")
        void nonsense() {
            assertThatThrownBy(() -> Condensation.hours(1.2, new Season(0, 6), 20, 10, 1))
                    .hasMessageContaining("fall is 1.2");
        }
    }
}
