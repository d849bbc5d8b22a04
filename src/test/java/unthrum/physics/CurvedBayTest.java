package unthrum.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import unthrum.physics.ReferenceTable.Row;

@DisplayName("What a curved bay rings at")
class CurvedBayTest {

    private static double first(Row row) {
        Skin skin = ReferenceTable.sheet(row).skin().loaded(row.number("added_kg_m2"));
        return ShellModes.lowest(skin, ReferenceTable.bay(row), ReferenceTable.support(row)).value().frequency();
    }

    @Nested
    @DisplayName("against finite elements")
    class FiniteElements {

        static Stream<Row> sliding() {
            return curved().filter(row -> row.text("inplane").equals("SD"));
        }

        static Stream<Row> fixed() {
            return curved().filter(row -> row.text("inplane").equals("FIX"));
        }

        private static Stream<Row> curved() {
            return ReferenceTable.rows("panels.csv").stream().filter(row -> row.has("Rx_m") || row.has("Ry_m"));
        }

        @ParameterizedTest
        @MethodSource("sliding")
        @DisplayName("edges free to slide: within 1.5 % hinged, 5 % clamped")
        void slidingEdges(Row row) {
            double percent = ReferenceTable.support(row).clamped() ? 5 : 1.5;
            assertThat(first(row)).isCloseTo(row.number("f1_fe"), withinPercentage(percent));
        }

        @ParameterizedTest
        @MethodSource("sliding")
        @DisplayName("the second to fourth mode too, edges free to slide: within 1.5 % hinged, 5 % clamped")
        void higherModes(Row row) {
            boolean clamped = ReferenceTable.support(row).clamped();
            Skin skin = ReferenceTable.sheet(row).skin().loaded(row.number("added_kg_m2"));
            List<Mode> modes =
                    ShellModes.upTo(1.2 * row.number("f4_fe"), skin, ReferenceTable.bay(row), clamped);
            for (int i = 1; i < 4; i++) {
                assertThat(modes.get(i).frequency())
                        .isCloseTo(row.number("f" + (i + 1) + "_fe"), withinPercentage(clamped ? 5 : 1.5));
            }
        }

        @ParameterizedTest
        @MethodSource("fixed")
        @DisplayName("edges unable to slide: within 2 %, far inside the 20 % allowed")
        void fixedEdges(Row row) {
            assertThat(first(row)).isCloseTo(row.number("f1_fe"), withinPercentage(2));
        }

        static Stream<Row> deep() {
            return ReferenceTable.rows("deep-curves.csv").stream();
        }

        @ParameterizedTest
        @MethodSource("deep")
        @DisplayName("even the deepest curves allowed stay within 1.5 % (hinged, sliding) and 2.5 % (all others)")
        void deepCurves(Row row) {
            Skin skin = Sheet.steel(row.number("thickness_mm") / 1000).skin();
            Support support = Support.valueOf(row.text("support"));
            Bay bay = Bay.curved(
                    row.number("a_mm") / 1000,
                    row.number("b_mm") / 1000,
                    row.number("rise_a_mm") / 1000,
                    row.number("rise_b_mm") / 1000);
            assertThat(ShellModes.lowest(skin, bay, support).value().frequency())
                    .isCloseTo(row.number("f1_fe"), withinPercentage(support == Support.HINGED_SLIDING ? 1.5 : 2.5));
        }
    }

    @Nested
    @DisplayName("as the curve rises")
    class Rise {

        private static final Skin SKIN = Sheet.steel(0.001).skin();

        private static Bay bay(String shape, double aspect, double rise) {
            double acrossShort = 8 * rise;
            double acrossLong = 8 * rise / (aspect * aspect);
            return switch (shape) {
                case "sphere" -> new Bay(aspect, 1, acrossShort, acrossShort);
                case "cyl_short" -> new Bay(aspect, 1, 0, acrossShort);
                default -> new Bay(aspect, 1, acrossLong, 0);
            };
        }

        private static double factor(String shape, double aspect, double rise, Support support) {
            double flat = ShellModes.lowest(SKIN, Bay.flat(aspect, 1), support).value().frequency();
            return ShellModes.lowest(SKIN, bay(shape, aspect, rise), support).value().frequency() / flat;
        }

        static Stream<Row> curvature() {
            return ReferenceTable.rows("curvature.csv").stream();
        }

        @Test
        @DisplayName("the first frequency rises as in the whole table, within 3.5 %, and nine in ten within 1 %")
        void stiffening() {
            double[] errors = curvature().mapToDouble(Rise::factorError).sorted().toArray();
            assertThat(errors).hasSize(1368);
            assertThat(errors[errors.length - 1]).isLessThan(0.035);
            assertThat(errors[errors.length * 9 / 10]).isLessThan(0.01);
        }

        @Test
        @DisplayName("the bending share falls as in the table, within 0.05 save where two modes change places")
        void bendingShare() {
            double[] errors = curvature().mapToDouble(Rise::shareError).sorted().toArray();
            assertThat(errors[errors.length - 6]).isLessThan(0.05);
        }

        @Test
        @DisplayName("two, five and ten times the flat frequency come at the rise of the table, within 4 % of factor")
        void thresholds() {
            for (Row row : ReferenceTable.rows("curvature-thresholds.csv")) {
                for (String column : List.of("r/h@2", "r/h@5", "r/h@10")) {
                    if (row.has(column)) {
                        double factor = factor(
                                row.text("shape"),
                                row.number("aspect"),
                                row.number(column) * 0.001,
                                ReferenceTable.support(row));
                        assertThat(factor)
                                .as(row + " " + column)
                                .isCloseTo(Double.parseDouble(column.substring(4)), withinPercentage(4));
                    }
                }
            }
        }

        private static double factorError(Row row) {
            double factor = factor(
                    row.text("shape"),
                    row.number("aspect"),
                    row.number("rise_over_h") * 0.001,
                    ReferenceTable.support(row));
            return Math.abs(factor / row.number("factor") - 1);
        }

        private static double shareError(Row row) {
            Bay bay = bay(row.text("shape"), row.number("aspect"), row.number("rise_over_h") * 0.001);
            Mode mode = ShellModes.lowest(SKIN, bay, ReferenceTable.support(row)).value();
            return Math.abs(mode.bendingShare() - row.number("bending_fraction"));
        }
    }

    @Nested
    @DisplayName("in shallow-shell theory")
    class Theory {

        private final Sheet sheet = new Sheet(210e9, 0.3, 7850, 0.0008);

        /**
         * Recomputed from the Donnell–Mushtari–Vlasov closed form (Soedel; NASA SP-288), recalled, not seen printed.
         */
        @ParameterizedTest
        @CsvSource({
            "1.2,1.0,0,0,3.333,1,1",
            "1.2,1.0,0,4,24.102,1,3",
            "1.2,1.0,6,4,143.384,1,3",
            "0.9,0.6,0,2,47.788,1,2"
        })
        @DisplayName("the lowest mode is often not the one with a single half-wave each way")
        void lowest(double a, double b, double rx, double ry, double frequency, int m, int n) {
            Bay bay = new Bay(a, b, rx == 0 ? 0 : 1 / rx, ry == 0 ? 0 : 1 / ry);
            Mode mode = ShellModes.lowest(sheet.skin(), bay, Support.HINGED_SLIDING).value();
            assertThat(mode.frequency()).isCloseTo(frequency, withinPercentage(0.02));
            assertThat(mode.lengthHalfWaves()).isEqualTo(m);
            assertThat(mode.widthHalfWaves()).isEqualTo(n);
        }

        /** ω h √(ρ/E) as printed to four places in papers on shallow shells (Alijani, Amabili 2011), from memory. */
        @ParameterizedTest
        @CsvSource({"0,0,0.05973", "0.5,0,0.06475", "0.5,0.5,0.07790", "0.5,-0.5,0.05973"})
        @DisplayName("square shells ten thicknesses wide ring as in published tables")
        void published(double kx, double ky, double parameter) {
            Skin skin = new Sheet(1, 0.3, 1, 0.1).skin();
            double frequency = ShellModes.sliding(skin, new Bay(1, 1, kx, ky), false, 1, 1).frequency();
            assertThat(2 * Math.PI * frequency * 0.1).isCloseTo(parameter, withinPercentage(0.1));
        }

        @Test
        @DisplayName("a sphere adds √(E/ρ)/(2πR) in squares to every mode")
        void sphere() {
            Bay flat = Bay.flat(1.2, 1);
            for (int m = 1; m <= 4; m++) {
                double curved = ShellModes.sliding(sheet.skin(), new Bay(1.2, 1, 0.25, 0.25), false, m, 2)
                        .frequency();
                double added = Math.sqrt(curved * curved - Math.pow(PlateModes.hinged(sheet.skin(), flat, m, 2), 2));
                assertThat(added).isCloseTo(205.7951, withinPercentage(1e-4));
            }
        }

        @ParameterizedTest
        @EnumSource
        @DisplayName("turning the bay by a right angle changes nothing")
        void turned(Support support) {
            Mode one = ShellModes.lowest(sheet.skin(), new Bay(0.7, 0.4, 0.1, 0.5), support).value();
            Mode other = ShellModes.lowest(sheet.skin(), new Bay(0.4, 0.7, 0.5, 0.1), support).value();
            assertThat(other.frequency()).isCloseTo(one.frequency(), withinPercentage(1e-4));
            assertThat(other.bendingShare()).isCloseTo(one.bendingShare(), within(1e-3));
        }

        @Test
        @DisplayName("an arc of known radius has its rise")
        void rise() {
            DoubleStream.of(0.3, 0.5, 1, 2, 10).forEach(radius -> {
                double rise = radius * (1 - Math.cos(0.4 / (2 * radius)));
                assertThat(Bay.rolled(0.6, 0.4, rise).widthCurvature()).isCloseTo(1 / radius, withinPercentage(1e-6));
            });
            assertThat(Bay.rolled(0.6, 0.4, 0)).isEqualTo(Bay.flat(0.6, 0.4));
            assertThat(Bay.rolled(0.6, 0.4, 1e-12).widthCurvature()).isCloseTo(8e-12 / 0.16, withinPercentage(1e-6));
            assertThat(Bay.rolled(0.6, 0.4, 0.01).riseOverSpan()).isCloseTo(0.025, withinPercentage(1e-6));
            assertThat(Bay.rolled(0.6, 0.4, 0.5).riseOverSpan()).isGreaterThan(ShellModes.SHALLOW);
        }
    }

    @Nested
    @DisplayName("outside the theory's range")
    class Outside {

        @Test
        @DisplayName("a deep curve gets no number")
        void deep() {
            Estimate<Mode> estimate = ShellModes.lowest(
                    Sheet.steel(0.0008).skin(), Bay.rolled(0.6, 0.4, 0.15), Support.HINGED_SLIDING);
            assertThat(estimate.isWithin()).isFalse();
            assertThat(estimate.reason()).contains("too deep");
        }

        @Test
        @DisplayName("a thick skin on a short span gets no number")
        void thick() {
            assertThat(Ringing.of(Sheet.steel(0.003).skin(), Bay.flat(0.02, 0.5)).reason()).contains("too thick");
        }
    }
}
