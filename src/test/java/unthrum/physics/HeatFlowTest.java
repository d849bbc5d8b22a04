package unthrum.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import unthrum.physics.HeatLayer.AirGap;
import unthrum.physics.HeatLayer.Solid;

@DisplayName("Heat through a panel")
class HeatFlowTest {
    private static final Solid SKIN = new Solid(0.0008, 50);
    private static final Solid FOAM = new Solid(0.010, 0.036);
    private static final Solid LINING = new Solid(0.003, 0.15);

    @Nested
    @DisplayName("Layers in series")
    class Layers {
        @ParameterizedTest(name = "{0}: {1}, U = {5} W/m²K")
        @CsvFileSource(resources = "transmittance.csv", numLinesToSkip = 1)
        @DisplayName("have the published transmittance")
        void transmittance(String id, String construction, double outer, String layers, double inner, double expected,
                double tolerance) {
            List<Solid> solids = Arrays.stream(layers.split(" ")).map(HeatFlowTest::solid).toList();

            HeatFlow flow = HeatFlow.through(solids, HeatDirection.HORIZONTAL, 30, 20, outer, inner).orElseThrow();

            assertThat(1 / flow.resistance()).isCloseTo(expected, within(tolerance));
            assertThat(flow.flow()).isCloseTo(10 * expected, within(10 * tolerance));
        }

        @ParameterizedTest(name = "{0}: {4} °C")
        @CsvFileSource(resources = "faces.csv", numLinesToSkip = 1)
        @DisplayName("have the published temperatures at their faces")
        void faces(String id, double outside, double inside, String layers, String expected, double tolerance) {
            List<Solid> solids = Arrays.stream(layers.split(" ")).map(HeatFlowTest::solid).toList();
            double[] faces = Arrays.stream(expected.split(" ")).mapToDouble(Double::parseDouble).toArray();

            List<Double> found = UsualSurfaces.through(solids, HeatDirection.HORIZONTAL, outside, inside).orElseThrow()
                    .faces();

            assertThat(found).hasSize(faces.length);
            for (int i = 0; i < faces.length; i++) {
                assertThat(found.get(i)).isCloseTo(faces[i], within(tolerance));
            }
        }

        @Test
        @DisplayName("share the fall of temperature by their resistances: 10 mm foam under a roof at 78.94 °C sol-air")
        void interfaces() {
            HeatFlow flow = UsualSurfaces.through(List.of(SKIN, FOAM), HeatDirection.DOWN, 78.94, 25).orElseThrow();

            // by hand: R = 0.04 + 0.000016 + 0.277778 + 0.17 = 0.487794; q = 53.94 / R = 110.579
            assertThat(flow.flow()).isCloseTo(110.579, within(1e-3));
            assertThat(flow.faces()).hasSize(3);
            assertThat(flow.faces().get(0)).isCloseTo(78.94 - 110.579 * 0.04, within(1e-3));
            assertThat(UsualSurfaces.innerFace(flow)).isCloseTo(25 + 110.579 * 0.17, within(1e-3));
            assertThat(flow.peak(1)).isEqualTo(flow.faces().get(1));
        }

        @Test
        @DisplayName("run heat outward in winter, the inner face the warmest")
        void winter() {
            HeatFlow flow = UsualSurfaces.through(List.of(SKIN, FOAM), HeatDirection.UP, -10, 20).orElseThrow();

            assertThat(flow.flow()).isNegative();
            assertThat(flow.peak(1)).isEqualTo(UsualSurfaces.innerFace(flow));
        }

        @Test
        @DisplayName("refuse a temperature below absolute zero and a layer that conducts nothing")
        void nonsense() {
            assertThatThrownBy(() -> UsualSurfaces.through(List.of(SKIN), HeatDirection.UP, -300, 20))
                    .hasMessageContaining("outside is -300.0");
            assertThatThrownBy(() -> new Solid(0.01, 0)).hasMessageContaining("conductivity is 0.0");
        }
    }

    @Nested
    @DisplayName("Surfaces and air gaps")
    class Films {
        @ParameterizedTest(name = "{0}: {1}, {2} m²K/W")
        @CsvFileSource(resources = "surface-resistance.csv", numLinesToSkip = 1)
        @DisplayName("inner surfaces are as tabled")
        void surfaces(String id, HeatDirection direction, double expected) {
            assertThat(direction.innerSurface()).isEqualTo(expected);
        }

        @ParameterizedTest(name = "{0} mm deep")
        @CsvFileSource(resources = "air-gap.csv", numLinesToSkip = 1)
        @DisplayName("a closed gap between dull faces has the tabled resistance (printed to 0.01)")
        void gaps(double millimetres, double up, double horizontal, double down) {
            AirGap gap = new AirGap(millimetres / 1000, 0.9, 0.9);

            assertThat(gap.resistance(HeatDirection.UP, 10, 5)).isCloseTo(up, within(0.006));
            assertThat(gap.resistance(HeatDirection.HORIZONTAL, 10, 5)).isCloseTo(horizontal, within(0.006));
            assertThat(gap.resistance(HeatDirection.DOWN, 10, 5)).isCloseTo(down, within(0.006));
        }

        @Test
        @DisplayName("air in a gap with 8 K across it carries what convection research gives for such slots")
        void convection() {
            // at 10 °C: Ra = 1.22e8 * 8 * d^3, air conducts 0.025 W/(m K); both correlations from memory
            double rayleighRoot = Math.cbrt(1.22e8 * 8) * 0.05;
            double upright = 0.0605 * rayleighRoot * 0.025 / 0.05; // Elsherbiny, Raithby and Hollands 1982
            double level = (1.44 + Math.cbrt(1.0 / 5830) * rayleighRoot) * 0.025 / 0.05; // Hollands and others 1976

            assertThat(HeatDirection.HORIZONTAL.gapConvection(0.05, 8)).isCloseTo(upright, Percentage.withPercentage(5));
            assertThat(HeatDirection.UP.gapConvection(0.05, 8)).isCloseTo(level, Percentage.withPercentage(12));
            // ISO 6946 annex D for heat downward, from memory, by hand: 0.09 * 20^0.187 * 0.05^-0.44 = 0.5888
            assertThat(HeatDirection.DOWN.gapConvection(0.05, 20)).isCloseTo(0.5888, within(1e-3));
        }

        @Test
        @DisplayName("a foil that faces the gap under a roof cuts the flow by a third or more; pressed flat it does nothing")
        void foil() {
            double dull = through(new AirGap(0.02, 0.9, 0.9));
            double bright = through(new AirGap(0.02, 0.05, 0.9));

            assertThat(bright).isLessThan(0.67 * dull);
            assertThat(through(new Solid(0.00003, 230))).isGreaterThan(dull);
        }

        @Test
        @DisplayName("the gap settles at the temperatures that its own resistance brings about")
        void settled() {
            AirGap gap = new AirGap(0.02, 0.9, 0.9);
            HeatFlow flow = UsualSurfaces.through(List.of(SKIN, gap, LINING), HeatDirection.UP, -10, 20).orElseThrow();
            double fall = flow.faces().get(2) - flow.faces().get(1);
            double mean = (flow.faces().get(2) + flow.faces().get(1)) / 2;

            assertThat(-flow.flow() * gap.resistance(HeatDirection.UP, mean, fall)).isCloseTo(fall, within(1e-6));
        }

        @Test
        @DisplayName("a gap deeper than 0.3 m is outside the range of the formulas")
        void outsideItsRange() {
            assertThat(UsualSurfaces.through(List.of(SKIN, new AirGap(0.31, 0.9, 0.9)), HeatDirection.UP, 0, 20)).isEmpty();
            assertThat(UsualSurfaces.through(List.of(SKIN, new AirGap(0.30, 0.9, 0.9)), HeatDirection.UP, 0, 20)).isPresent();
        }

        private double through(HeatLayer between) {
            return UsualSurfaces.through(List.of(SKIN, FOAM, between, LINING), HeatDirection.DOWN, 78, 25).orElseThrow().flow();
        }
    }

    @Nested
    @DisplayName("Sun and radiant heat")
    class Radiant {
        @ParameterizedTest(name = "{0}: {6} °C")
        @CsvFileSource(resources = "sol-air.csv", numLinesToSkip = 1)
        @DisplayName("the sol-air temperature is as published")
        void solAir(String id, double air, double absorptance, double irradiance, double skyLoss, double film,
                double expected, double tolerance) {
            assertThat(SolAir.temperature(air, absorptance, irradiance, skyLoss, film))
                    .isCloseTo(expected, within(tolerance));
        }

        @ParameterizedTest(name = "{0}: {4} W/m²")
        @CsvFileSource(resources = "radiation.csv", numLinesToSkip = 1)
        @DisplayName("two facing planes, bare or with a foil between them, exchange the published flow")
        void radiation(String id, double first, double second, String gaps, double expected, double tolerance) {
            double resistance = Arrays.stream(gaps.split(" ")).mapToDouble(g -> 1 / exchangeFactor(g)).sum();

            assertThat((blackBody(first) - blackBody(second)) / resistance).isCloseTo(expected, within(tolerance));
        }

        @ParameterizedTest(name = "at {0} °C: {1} W/m²K")
        @CsvSource({"-10, 4.1", "0, 4.6", "10, 5.1", "20, 5.7", "30, 6.3"})
        @DisplayName("a black face has the radiative coefficient of ISO 6946 annex C (from memory, printed to 0.1)")
        void coefficient(double celsius, double expected) {
            assertThat(Radiation.coefficient(celsius)).isCloseTo(expected, within(0.051));
        }

        @Test
        @DisplayName("the coefficient is the slope of the exact exchange")
        void slope() {
            assertThat(blackBody(20.5) - blackBody(19.5)).isCloseTo(Radiation.coefficient(20), Percentage.withPercentage(0.01));
        }

        @Test
        @DisplayName("an absorptance above one and an emissivity of nought are refused")
        void nonsense() {
            assertThatThrownBy(() -> SolAir.temperature(30, 1.1, 900, 0, 17)).hasMessageContaining("absorptance is 1.1");
            assertThatThrownBy(() -> Radiation.exchangeFactor(0, 0.9)).hasMessageContaining("emissivity is 0.0");
        }
    }

    /** σT⁴, W/m². */
    private static double blackBody(double celsius) {
        return Radiation.STEFAN_BOLTZMANN * Math.pow(celsius + 273.15, 4);
    }

    private static Solid solid(String thicknessOverConductivity) {
        String[] parts = thicknessOverConductivity.split("/");
        return new Solid(Double.parseDouble(parts[0]), Double.parseDouble(parts[1]));
    }

    private static double exchangeFactor(String emissivities) {
        String[] parts = emissivities.split("/");
        return Radiation.exchangeFactor(Double.parseDouble(parts[0]), Double.parseDouble(parts[1]));
    }
}
