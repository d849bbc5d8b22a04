package unthrum.physics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import unthrum.physics.ReferenceTable.Row;

@DisplayName("What a panel with pressed beads rings at")
class BeadedPanelTest {

    private static final List<Support> EDGES =
            List.of(Support.HINGED_SLIDING, Support.HINGED_FIXED, Support.CLAMPED_FIXED);
    private static final List<String> TRUTHS = List.of("f1_hinged_hz", "f1_hinged_held_hz", "f1_fixed_hz");
    /** What the issue allows. */
    private static final double WIDEST = 1.15;

    static Stream<Row> panels() {
        return ReferenceTable.rows("beaded.csv").stream();
    }

    static Skin skin(Row row) {
        double gauge = row.number("thickness_mm") / 1000;
        return (row.text("material").equals("steel") ? Sheet.steel(gauge) : Sheet.aluminium(gauge)).skin();
    }

    private static BeadedPanel panel(Row row) {
        boolean along = row.text("runs").equals("along");
        List<Bead> beads = new ArrayList<>();
        for (String at : row.text("positions_mm").split(";")) {
            beads.add(new Bead(Double.parseDouble(at) / 1000, row.number("width_mm") / 1000,
                    row.number("height_mm") / 1000, row.number("flank_mm") / 1000));
        }
        double a = row.number("a_mm") / 1000;
        double b = row.number("b_mm") / 1000;
        return new BeadedPanel(along ? a : b, along ? b : a, beads, row.number("stop_short_mm") / 1000,
                row.number("runout_mm") / 1000);
    }

    private static double first(Row row, Support support) {
        return panel(row).first(skin(row), support).value().frequency();
    }

    private static Band told(Row row) {
        return BeadedPanel.ERROR.around(first(row, Support.HINGED_SLIDING), first(row, Support.CLAMPED_FIXED));
    }

    @Nested
    @DisplayName("against finite elements")
    class FiniteElements {

        static Stream<Row> panels() {
            return BeadedPanelTest.panels();
        }

        @ParameterizedTest
        @MethodSource("panels")
        @DisplayName("each way of holding the edges lies within the stated error")
        void eachEdge(Row row) {
            for (int i = 0; i < EDGES.size(); i++) {
                double computed = first(row, EDGES.get(i));
                assertThat(BeadedPanel.ERROR.around(computed, computed).contains(row.number(TRUTHS.get(i))))
                        .as("%s: %.2f Hz against %s", EDGES.get(i), computed, row.number(TRUTHS.get(i))).isTrue();
            }
        }

        @Test
        @DisplayName("the told range holds every truth and is nowhere wider than 1.15 times theirs")
        void range() {
            int held = 0;
            List<Double> widths = new ArrayList<>();
            for (Row row : panels().toList()) {
                Band told = told(row);
                held += (int) TRUTHS.stream().filter(truth -> told.contains(row.number(truth))).count();
                widths.add(told.upper() / told.lower() * row.number("f1_hinged_hz") / row.number("f1_fixed_hz"));
            }
            widths.sort(null);
            int all = widths.size() * TRUTHS.size();
            System.out.printf("beaded panels: %d of %d truths in the told range; width over the truths' own: median"
                    + " %.3f, most %.3f%n", held, all, widths.get(widths.size() / 2), widths.get(widths.size() - 1));
            assertThat(held).isEqualTo(all);
            assertThat(widths.get(widths.size() - 1)).isLessThan(WIDEST);
        }
    }

    @Nested
    @DisplayName("in plain sense")
    class Sense {

        private final Skin skin = Sheet.steel(0.0008).skin();

        private BeadedPanel one(double height, double stopShort) {
            return new BeadedPanel(0.7, 0.5, List.of(new Bead(0.2, 0.03, height, 0)), stopShort, 0.03);
        }

        private double first(BeadedPanel panel, Support support) {
            return panel.first(skin, support).value().frequency();
        }

        @ParameterizedTest
        @EnumSource
        @DisplayName("a bead of no height to speak of is a flat sheet")
        void flat(Support support) {
            double flat = ShellModes.lowest(skin, Bay.flat(0.7, 0.5), support).value().frequency();
            assertThat(first(one(1e-6, 0), support)).isBetween(flat * 0.999, flat * 1.015);
            assertThat(panelShare(one(1e-6, 0), support)).isGreaterThan(0.999);
        }

        private double panelShare(BeadedPanel panel, Support support) {
            return panel.first(skin, support).value().bendingShare();
        }

        @Test
        @DisplayName("a taller bead, one that runs to the edge and edges held harder all raise it")
        void stiffer() {
            assertThat(first(one(0.006, 0), Support.HINGED_SLIDING))
                    .isGreaterThan(first(one(0.003, 0), Support.HINGED_SLIDING));
            assertThat(first(one(0.006, 0), Support.HINGED_FIXED))
                    .isGreaterThan(first(one(0.006, 0.04), Support.HINGED_FIXED));
            for (Support support : Support.values()) {
                assertThat(first(one(0.006, 0.04), support)).isBetween(
                        first(one(0.006, 0.04), Support.HINGED_SLIDING) * 0.9999,
                        first(one(0.006, 0.04), Support.CLAMPED_FIXED) * 1.0001);
            }
        }

        @Test
        @DisplayName("counting the beads from the other edge changes nothing")
        void mirrored() {
            List<Bead> beads = List.of(new Bead(0.1, 0.03, 0.004, 0), new Bead(0.3, 0.05, 0.006, 0.01));
            List<Bead> back = List.of(new Bead(0.3, 0.05, 0.006, 0.01), new Bead(0.5, 0.03, 0.004, 0));
            double one = first(new BeadedPanel(0.7, 0.6, beads, 0, 0), Support.HINGED_SLIDING);
            double other = first(new BeadedPanel(0.7, 0.6, back, 0, 0), Support.HINGED_SLIDING);
            assertThat(other).isBetween(one * 0.9999, one * 1.0001);
        }

        @Test
        @DisplayName("beads that touch, that are walls, or that are all end get no number")
        void outside() {
            BeadedPanel touching = new BeadedPanel(0.7, 0.5,
                    List.of(new Bead(0.2, 0.03, 0.004, 0), new Bead(0.22, 0.03, 0.004, 0)), 0, 0);
            assertThat(touching.first(skin, Support.HINGED_SLIDING).reason()).contains("touch");
            assertThat(one(0.02, 0).first(skin, Support.HINGED_SLIDING).reason()).contains("wall");
            assertThat(one(0.004, 0.33).first(skin, Support.HINGED_SLIDING).reason()).contains("too short");
        }
    }
}
