package unthrum.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import unthrum.physics.ReferenceTable.Row;

@DisplayName("What a flat bay rings at")
class FlatBayTest {

    private static final Skin STEEL = Sheet.steel(0.0008).skin();

    private static List<Double> sorted(Skin skin, Bay bay, boolean clamped) {
        double enough = 12 * PlateModes.clamped(skin, bay, 1, 1);
        return ShellModes.upTo(enough, skin, bay, clamped).stream().map(Mode::frequency).toList();
    }

    @Nested
    @DisplayName("against published plates")
    class Published {

        static Stream<Row> parameters() {
            return ReferenceTable.rows("plate-lambda.csv").stream();
        }

        static Stream<Row> workedExamples() {
            return ReferenceTable.rows("plate-frequencies.csv").stream();
        }

        @ParameterizedTest
        @MethodSource("parameters")
        @DisplayName("the frequency parameter is that of the handbook")
        void frequencyParameter(Row row) {
            double length = 1;
            Bay bay = Bay.flat(length, length / row.number("aspect"));
            boolean clamped = row.text("edges").equals("CCCC");
            double frequency = sorted(STEEL, bay, clamped).get((int) row.number("mode") - 1);
            double lambda = Damping.waveNumberSquared(STEEL, frequency) * length * length;
            assertThat(lambda)
                    .isCloseTo(row.number("lambda"), withinPercentage(100 * row.number("tolerance")));
        }

        @ParameterizedTest
        @MethodSource("workedExamples")
        @DisplayName("hinged plates ring as in worked examples")
        void workedExample(Row row) {
            Sheet sheet = new Sheet(row.number("E"), row.number("nu"), row.number("rho"), row.number("h"));
            Bay bay = Bay.flat(row.number("a"), row.number("b"));
            double frequency =
                    PlateModes.hinged(sheet.skin(), bay, (int) row.number("m"), (int) row.number("n"));
            assertThat(frequency)
                    .isCloseTo(row.number("frequency"), withinPercentage(100 * row.number("tolerance")));
        }

        /** Brischetto, Shock and Vibration 2014, table 7: exact three-dimensional solution at a/h = 100. */
        @ParameterizedTest
        @MethodSource
        @DisplayName("a thin plate lies within 0.1 % of the exact three-dimensional solution")
        void threeDimensional(int m, int n, double printed) {
            Sheet sheet = new Sheet(70e9, 0.3, 2700, 0.01);
            double frequency = PlateModes.hinged(sheet.skin(), Bay.flat(1, 3), m, n);
            double parameter = 2 * Math.PI * frequency / 0.01 * Math.sqrt(2700 / 70e9);
            assertThat(parameter).isCloseTo(printed, withinPercentage(0.12));
        }

        static Stream<Arguments> threeDimensional() {
            return Stream.of(
                    arguments(1, 1, 3.3179),
                    arguments(1, 2, 4.313),
                    arguments(2, 1, 12.27),
                    arguments(2, 2, 13.264));
        }
    }

    @Nested
    @DisplayName("against finite elements")
    class FiniteElements {

        static Stream<Row> flat() {
            return ReferenceTable.panels("flat");
        }

        @ParameterizedTest
        @MethodSource("flat")
        @DisplayName("hinged within 0.15 %, clamped within 0.5 %, for the first four modes")
        void firstFour(Row row) {
            boolean clamped = ReferenceTable.support(row).clamped();
            List<Double> modes = sorted(ReferenceTable.sheet(row).skin(), ReferenceTable.bay(row), clamped);
            for (int i = 0; i < 4; i++) {
                assertThat(modes.get(i))
                        .isCloseTo(row.number("f" + (i + 1) + "_fe"), withinPercentage(clamped ? 0.5 : 0.15));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.2, 0.45})
    @DisplayName("Poisson's ratio enters only through the bending stiffness")
    void poisson(double nu) {
        Bay bay = Bay.flat(0.6, 0.4);
        Skin skin = new Sheet(205e9, nu, 7850, 0.0008).skin();
        Skin other = new Sheet(205e9, 0.3, 7850, 0.0008).skin();
        double ratio = Math.sqrt((1 - 0.09) / (1 - nu * nu));
        assertThat(PlateModes.hinged(skin, bay, 2, 1) / PlateModes.hinged(other, bay, 2, 1))
                .isCloseTo(ratio, withinPercentage(1e-9));
        assertThat(PlateModes.clamped(skin, bay, 2, 1) / PlateModes.clamped(other, bay, 2, 1))
                .isCloseTo(ratio, withinPercentage(1e-9));
    }
}
