package unthrum.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.junit.jupiter.api.Assumptions.assumeTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.nio.file.Path;
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
}
