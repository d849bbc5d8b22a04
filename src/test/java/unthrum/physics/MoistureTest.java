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
            assertThat(Moisture.saturationPressure(celsius).orElseThrow())
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
            assertThat(Moisture.saturationPressure(-41)).isEmpty();
            assertThat(Moisture.saturationPressure(80)).isEmpty();
            assertThat(Moisture.dewPoint(20, 0)).isEmpty();
            assertThat(Moisture.dewPoint(-39, 0.2)).isEmpty();
            assertThat(Moisture.relativeHumidity(60, 10)).isEmpty();
            assertThat(Moisture.vapourPressure(60, 0.5)).isEmpty();
        }

        @Test
        @DisplayName("at its dew point fills the air to 100 %, and warming the air makes it drier")
        void humidity() {
            assertThat(Moisture.relativeHumidity(9.261, 9.261).orElseThrow()).isEqualTo(1);
            assertThat(Moisture.relativeHumidity(20, 9.261).orElseThrow()).isCloseTo(0.5, within(1e-4)); // T8-D01
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
            double face = foamed(foam, -10, 20, innerSurface).innerFace();

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

            assertThat(foamed(0.00695, -10, 20, 0.13).innerFace()).isCloseTo(dewPoint, within(0.02));
            assertThat(foamed(0.0069, -10, 20, 0.13).innerFace()).isLessThan(dewPoint);
            assertThat(foamed(0.0070, -10, 20, 0.13).innerFace()).isGreaterThan(dewPoint);
        }
    }

    @Nested
    @DisplayName("Condensation in a layup")
    class InLayup {
        private final HeatFlow winter = foamed(0.02, -10, 20, 0.13);
        private final double dewPoint = Moisture.dewPoint(20, 0.5).orElseThrow();

        @Test
        @DisplayName("wets the cold metal where room air reaches it, though the inner face is dry")
        void reached() {
            Condensation water = Condensation.wherever(winter, dewPoint);

            assertThat(water.wet()).isTrue();
            assertThat(water.worstFace()).isEqualTo(1);
            assertThat(water.worstMargin()).isCloseTo(winter.faces().get(1) - dewPoint, within(1e-12));
            assertThat(water.margins().get(2)).isPositive();
        }

        @Test
        @DisplayName("in a summer wall stays away")
        void summer() {
            assertThat(Condensation.wherever(foamed(0.02, 30, 25, 0.13), 13.858).wet()).isFalse(); // T8-D02
        }

        @Test
        @DisplayName("still forms on tight metal behind foam that lets vapour in, and not where the outer layer breathes")
        void profile() {
            double inside = Moisture.vapourPressure(20, 0.5).orElseThrow();
            double outside = Moisture.vapourPressure(-10, 0.8).orElseThrow();
            Condensation tight = Condensation.throughLayers(winter, new double[] {1500, 1}, outside, inside).orElseThrow();
            Condensation breathing = Condensation.throughLayers(winter, new double[] {0.001, 100}, outside, inside).orElseThrow();

            assertThat(tight.margins().get(1)).isCloseTo(winter.faces().get(1) - dewPoint, within(0.05));
            assertThat(tight.wet()).isTrue();
            assertThat(breathing.wet()).isFalse();
        }

        @Test
        @DisplayName("halves the fall of vapour pressure between equal layers (ISO 13788 profile, by hand)")
        void halves() {
            Condensation water = Condensation.throughLayers(winter, new double[] {5, 5}, 400, 1000).orElseThrow();

            double dewPointAtMiddle = Moisture.dewPointOf(700).orElseThrow();
            assertThat(water.margins().get(1)).isCloseTo(winter.faces().get(1) - dewPointAtMiddle, within(1e-12));
        }

        @Test
        @DisplayName("needs the vapour resistance of every layer")
        void everyLayer() {
            assertThatThrownBy(() -> Condensation.throughLayers(winter, new double[] {5}, 400, 1000))
                    .hasMessageContaining("one for each of 2 layers");
        }
    }
}
