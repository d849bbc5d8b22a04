package unthrum.physics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import unthrum.physics.ReferenceTable.Row;

/** Finite elements: crowned-unequal.csv. */
@DisplayName("What a panel rings at whose curves differ along and across, or whose roll tapers")
class UnequalCrownTest {

    private static final List<String> TRUTHS = List.of(
            "f1_hinged_sliding_hz", "f1_fixed_sliding_hz", "f1_hinged_held_hz", "f1_fixed_held_hz");
    /** What the issue allows. */
    private static final double WIDEST = 1.15;

    static Stream<Row> panels() {
        return ReferenceTable.rows("crowned-unequal.csv").stream();
    }

    static Stream<Row> tapered() {
        return panels().filter(row -> row.text("kind").equals("tapered"));
    }

    private static double metres(Row row, String column) {
        return row.number(column) / 1000;
    }

    private static TaperedRoll roll(Row row) {
        boolean along = row.text("curved_side").equals("along");
        double a = metres(row, "a_mm");
        double b = metres(row, "b_mm");
        return new TaperedRoll(along ? b : a, along ? a : b, metres(row, "rise_start_mm"), metres(row, "rise_end_mm"));
    }

    private static Ringing ringing(Row row) {
        Skin skin = BeadedPanelTest.skin(row);
        return row.text("kind").equals("tapered") ? roll(row).ringing(skin).value()
                : Ringing.of(skin, Bay.curved(metres(row, "a_mm"), metres(row, "b_mm"), metres(row, "rise_along_mm"),
                        metres(row, "rise_across_mm"))).value();
    }

    @Test
    @DisplayName("the told range holds the truth for all four edges and is nowhere wider than 1.15 times theirs")
    void range() {
        int held = 0;
        List<Double> widths = new ArrayList<>();
        for (Row row : panels().toList()) {
            Band told = ringing(row).told();
            double[] truths = TRUTHS.stream().mapToDouble(row::number).sorted().toArray();
            for (double truth : truths) {
                held += told.contains(truth) ? 1 : 0;
            }
            widths.add(told.upper() / told.lower() * truths[0] / truths[3]);
        }
        widths.sort(null);
        int all = widths.size() * TRUTHS.size();
        System.out.printf("unequal crowns: %d of %d truths in the told range; width over the truths' own: median %.3f,"
                + " most %.3f%n", held, all, widths.get(widths.size() / 2), widths.get(widths.size() - 1));
        assertThat(held).isEqualTo(all);
        assertThat(widths.get(widths.size() - 1)).isLessThan(WIDEST);
    }

    @ParameterizedTest
    @MethodSource("tapered")
    @DisplayName("a tapered roll is within the stated error for each way of holding its edges")
    void taperedEdges(Row row) {
        for (Support support : Support.values()) {
            double computed = roll(row).first(BeadedPanelTest.skin(row), support).value().frequency();
            String edge = support.toString().toLowerCase(Locale.ROOT).replace("fixed", "held").replace("clamped", "fixed");
            double truth = row.number("f1_" + edge + "_hz");
            assertThat(TaperedRoll.ERROR.around(computed, computed).contains(truth))
                    .as("%s: %.2f Hz against %s", support, computed, truth).isTrue();
        }
    }

    @Test
    @DisplayName("a roll that does not taper is an even one, whichever end is called near")
    void even() {
        Skin skin = Sheet.steel(0.0008).skin();
        for (Support support : Support.values()) {
            double even = ShellModes.lowest(skin, Bay.rolled(0.8, 0.5, 0.006), support).value().frequency();
            double roll = new TaperedRoll(0.8, 0.5, 0.006, 0.006).first(skin, support).value().frequency();
            assertThat(roll).isBetween(even * 0.98, even * 1.02);
            double near = new TaperedRoll(0.8, 0.5, 0.009, 0.002).first(skin, support).value().frequency();
            double far = new TaperedRoll(0.8, 0.5, 0.002, 0.009).first(skin, support).value().frequency();
            assertThat(near).isBetween(far * 0.9999, far * 1.0001);
        }
    }

    @Test
    @DisplayName("a roll too deep at one end gets no number")
    void deep() {
        assertThat(new TaperedRoll(0.8, 0.4, 0.002, 0.05).ringing(Sheet.steel(0.0008).skin()).reason())
                .contains("too deep");
    }
}
