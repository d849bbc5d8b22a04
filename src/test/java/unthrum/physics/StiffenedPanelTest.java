package unthrum.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import unthrum.physics.ReferenceTable.Row;

@DisplayName("What ribs, beads and layers do to a panel's first frequency")
class StiffenedPanelTest {

    private static final Stiffener TOP_HAT = Stiffener.boxSection(0.030, 0.020, 0.001);
    private static final Stiffener BEAD = Stiffener.bead(0.040, 0.005);

    @Nested
    @DisplayName("ribs and beads, against finite elements")
    class Stiffened {

        private static final Map<String, Sheet> SHEETS = new HashMap<>();

        static {
            ReferenceTable.rows("panels.csv").forEach(row -> SHEETS.put(row.text("id"), ReferenceTable.sheet(row)));
        }

        static Stream<Row> all() {
            return ReferenceTable.rows("stiffeners.csv").stream();
        }

        static Stream<Row> inRange() {
            return all().filter(row -> estimate(row).isWithin());
        }

        private static Stiffener stiffener(Row row) {
            return row.text("family").equals("hat") ? TOP_HAT : BEAD;
        }

        private static Estimate<Double> estimate(Row row) {
            return StiffenedPanel.first(
                    SHEETS.get(row.text("id")),
                    panel(row),
                    stiffener(row),
                    (int) row.number("n"),
                    row.text("boundary").equals("CCCC"));
        }

        private static Bay panel(Row row) {
            return Bay.flat(row.number("a_mm") / 1000, row.number("b_mm") / 1000);
        }

        @ParameterizedTest
        @MethodSource("inRange")
        @DisplayName("the lower of bay and whole panel is within 12 %")
        void within(Row row) {
            assertThat(estimate(row).value()).isCloseTo(row.number("f1_fe"), withinPercentage(12));
        }

        @Test
        @DisplayName("only two beads on a clamped panel are outside the range, and say so")
        void exceptions() {
            List<Row> outside = all().filter(row -> !estimate(row).isWithin()).toList();
            assertThat(outside).extracting(row -> row.text("id")).containsExactly("P103");
            assertThat(estimate(outside.get(0)).reason()).contains("several beads on a clamped panel");
        }

        @ParameterizedTest
        @MethodSource("all")
        @DisplayName("the bay beside a rib, and the whole panel with its beads, follow the table's own formulas")
        void parts(Row row) {
            boolean clamped = row.text("boundary").equals("CCCC");
            Bay panel = panel(row);
            Sheet sheet = SHEETS.get(row.text("id"));
            int count = (int) row.number("n");
            if (stiffener(row) == TOP_HAT) {
                assertThat(StiffenedPanel.bay(sheet, panel, TOP_HAT, count, clamped))
                        .isCloseTo(row.number("bay_clamped_at_stiff"), withinPercentage(0.2));
            } else {
                assertThat(StiffenedPanel.whole(sheet, panel, BEAD, count, clamped))
                        .isCloseTo(row.number("global"), withinPercentage(2));
            }
        }

        @Test
        @DisplayName("a panel with ribs lies inside the range of its clear bay")
        void bayRange() {
            Sheet sheet = Sheet.steel(0.0008);
            Bay panel = Bay.flat(0.6, 0.5);
            Bay clear = StiffenedPanel.clearBay(panel, TOP_HAT, 1);
            Band range = Ringing.betweenRibs(sheet.skin(), clear, 1).value().frequency();
            assertThat(clear.length()).isCloseTo(0.285, withinPercentage(1e-9));
            assertThat(range.lower())
                    .isCloseTo(StiffenedPanel.first(sheet, panel, TOP_HAT, 1, false).value(), withinPercentage(1e-6));
            assertThat(range.upper()).isGreaterThan(range.lower());
        }

        @Test
        @DisplayName("a curved panel and a panel full of ribs get no number")
        void outside() {
            Sheet sheet = Sheet.steel(0.0008);
            assertThat(StiffenedPanel.first(sheet, Bay.rolled(0.6, 0.5, 0.01), TOP_HAT, 1, false).isWithin()).isFalse();
            assertThat(StiffenedPanel.first(sheet, Bay.flat(0.6, 0.5), TOP_HAT, 20, false).reason())
                    .contains("no bay open");
        }
    }

    @Nested
    @DisplayName("layers, against finite elements")
    class Layers {

        static Stream<Row> loaded() {
            return ReferenceTable.panels("mass").filter(row -> !row.has("Rx_m"));
        }

        static Stream<Row> stiffened() {
            return ReferenceTable.panels("oberst");
        }

        private static double first(Skin skin, Row row) {
            return ShellModes.lowest(skin, ReferenceTable.bay(row), ReferenceTable.support(row)).value().frequency();
        }

        /** The layer's cell reads like 'E=3e+09 h=3mm rho=1400 nu=0.4'. */
        private static Sheet layer(Row row) {
            Map<String, Double> values = new HashMap<>();
            for (String pair : row.text("layer").split(" ")) {
                String[] parts = pair.split("=");
                values.put(parts[0], Double.parseDouble(parts[1].replace("mm", "")));
            }
            return new Sheet(values.get("E"), values.get("nu"), values.get("rho"), values.get("h") / 1000);
        }

        @ParameterizedTest
        @MethodSource("loaded")
        @DisplayName("a limp layer only loads the skin: within 0.5 %")
        void mass(Row row) {
            Skin skin = ReferenceTable.sheet(row).skin().loaded(row.number("added_kg_m2"));
            assertThat(first(skin, row)).isCloseTo(row.number("f1_fe"), withinPercentage(0.5));
        }

        @ParameterizedTest
        @MethodSource("stiffened")
        @DisplayName("a stiff layer also bends along: hinged within 0.9 %, clamped within 1.1 %")
        void stiffLayer(Row row) {
            double bound = row.text("boundary").equals("CCCC") ? 1.1 : 0.9;
            Skin skin = Skin.laminate(List.of(ReferenceTable.sheet(row), layer(row)));
            assertThat(first(skin, row)).isCloseTo(row.number("f1_fe"), withinPercentage(bound));
        }
    }

    @Test
    @DisplayName("two bonded halves are one sheet")
    void halves() {
        Skin whole = Sheet.steel(0.001).skin();
        Skin halves = Skin.laminate(List.of(Sheet.steel(0.0004), Sheet.steel(0.0006)));
        assertThat(halves.flexuralRigidity()).isCloseTo(whole.flexuralRigidity(), withinPercentage(1e-9));
        assertThat(halves.surfaceDensity()).isCloseTo(whole.surfaceDensity(), withinPercentage(1e-9));
    }
}
