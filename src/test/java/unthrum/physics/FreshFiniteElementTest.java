package unthrum.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.junit.jupiter.api.Assumptions.assumeTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Panels that stand in no table, solved afresh with CalculiX (S8R shells) from decks written here. */
@DisplayName("Panels solved afresh by finite elements")
class FreshFiniteElementTest {

    /** Elements each way: the first frequency then moves by under 1 % when the mesh is refined. */
    private static final int ELEMENTS = 24;

    @BeforeAll
    static void solver() {
        assumeTrue(CalculiX.isInstalled(), "skipped: the finite-element solver ccx (calculix-ccx) is not installed");
    }

    static Stream<Arguments> panels() {
        Sheet steel = Sheet.steel(0.0009);
        Sheet aluminium = Sheet.aluminium(0.0012);
        return Stream.of(
                arguments(steel, Bay.flat(0.55, 0.37), Support.HINGED_FIXED, 0.5),
                arguments(aluminium, Bay.flat(0.62, 0.33), Support.CLAMPED_FIXED, 1.5),
                arguments(steel, Bay.rolled(0.58, 0.47, 0.012), Support.HINGED_SLIDING, 1.5),
                arguments(steel, Bay.rolled(0.58, 0.47, 0.012), Support.CLAMPED_SLIDING, 5),
                arguments(steel, Bay.rolled(0.58, 0.47, 0.012), Support.CLAMPED_FIXED, 2),
                arguments(aluminium, Bay.rolled(0.80, 0.40, 0.006), Support.HINGED_FIXED, 2),
                arguments(steel, Bay.curved(0.66, 0.43, 0.007, 0.005), Support.CLAMPED_FIXED, 2));
    }

    @ParameterizedTest(name = "{1} {2}")
    @MethodSource("panels")
    @DisplayName("the first frequency agrees")
    void first(Sheet sheet, Bay bay, Support support, double percent, @TempDir Path folder) throws Exception {
        double solved = CalculiX.frequencies(folder, sheet, bay, support, ELEMENTS, ELEMENTS).get(0);
        double ours = ShellModes.lowest(sheet.skin(), bay, support).value().frequency();
        assertThat(ours).isCloseTo(solved, withinPercentage(percent));
    }

    static Stream<Arguments> beaded() {
        Sheet steel = Sheet.steel(0.0008);
        return Stream.of(
                arguments(steel, new BeadedPanel(0.62, 0.48,
                        List.of(new Bead(0.16, 0.04, 0.005, 0), new Bead(0.32, 0.04, 0.005, 0)), 0, 0)),
                arguments(Sheet.aluminium(0.001), new BeadedPanel(0.5, 0.44, List.of(new Bead(0.19, 0.03, 0.008, 0)), 0, 0)));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("beaded")
    @DisplayName("a panel with rounded beads from edge to edge agrees within 1.5 %, all edges fixed")
    void beads(Sheet sheet, BeadedPanel panel, @TempDir Path folder) throws Exception {
        double solved = CalculiX.pressed(folder, sheet, Bay.flat(panel.span(), panel.side()), Support.CLAMPED_FIXED,
                ELEMENTS, section(panel)).get(0);
        double ours = panel.first(sheet.skin(), Support.CLAMPED_FIXED).value().frequency();
        assertThat(ours).isCloseTo(solved, withinPercentage(1.5));
    }

    /** Eight elements across each bead and each bay, two lines of nodes an element. */
    private static double[][] section(BeadedPanel panel) {
        List<double[]> lines = new ArrayList<>(List.of(new double[] {0, 0}));
        double from = 0;
        for (Bead bead : panel.beads()) {
            stretch(lines, from, bead.start(), 0);
            stretch(lines, bead.start(), bead.end(), bead.height());
            from = bead.end();
        }
        stretch(lines, from, panel.side(), 0);
        return lines.toArray(double[][]::new);
    }

    private static void stretch(List<double[]> lines, double from, double to, double height) {
        for (int i = 1; i <= 16; i++) {
            lines.add(new double[] {from + (to - from) * i / 16, i < 16 ? height * Math.sin(Math.PI * i / 16) : 0});
        }
    }
}
