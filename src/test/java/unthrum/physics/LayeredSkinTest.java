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

@DisplayName("What layers do to a panel's first frequency")
class LayeredSkinTest {

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
