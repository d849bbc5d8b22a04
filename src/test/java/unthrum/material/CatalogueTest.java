package unthrum.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;
import unthrum.material.Material.Cell;
import unthrum.material.Material.DampingData.Point;
import unthrum.reading.Words;

@DisplayName("The catalogue of generic materials")
class CatalogueTest {
    private static final Catalogue CATALOGUE = Catalogue.load();

    static List<Material> all() {
        return CATALOGUE.all();
    }

    private static Material named(String name) {
        return CATALOGUE.find(name).orElseThrow();
    }

    @Nested
    @DisplayName("offers a choice")
    class Choice {
        @Test
        @DisplayName("of at least 25 materials, at least two of each kind of layer")
        void everyKindOfLayer() {
            assertThat(all()).hasSizeGreaterThanOrEqualTo(25);
            EnumSet<Layer> kinds = EnumSet.complementOf(EnumSet.of(Layer.ANY));
            assertThat(kinds).hasSize(8).allSatisfy(kind -> assertThat(CATALOGUE.of(kind)).hasSizeGreaterThan(1));
        }

        @Test
        @DisplayName("with some that state no burning rate and one that burns too fast, so that the rule has work")
        void burning() {
            assertThat(all()).filteredOn(m -> m.burnRate().isEmpty()).isNotEmpty();
            // 102 mm/min: 49 CFR 571.302, S4.3
            assertThat(all()).filteredOn(m -> m.burnRate().filter(r -> r.si() * 60_000 > 102).isPresent())
                    .extracting(Material::material).containsExactly("packing-pu-30");
        }

        @Test
        @DisplayName("with an absorber that a wet door bears")
        void wetAbsorber() {
            assertThat(CATALOGUE.of(Layer.ABSORBER)).anyMatch(m -> m.cell() == Cell.CLOSED);
        }

        @Test
        @DisplayName("with prices in one currency, so that they add up")
        void oneCurrency() {
            assertThat(all()).extracting(m -> m.price().currency()).containsOnly("EUR");
        }
    }

    @Nested
    @DisplayName("agrees with figures from outside")
    class Outside {
        @Test
        @DisplayName("a 2 mm barrier of 4 kg/m² has 2000 kg/m³ (common practice)")
        void barrierDensity() {
            Material barrier = named("vinyl-barrier-2");
            assertThat(barrier.surfaceDensity().si()).isEqualTo(4);
            assertThat(barrier.thickness().si()).isEqualTo(0.002);
            assertThat(barrier.density()).isEqualTo(2000, offset(1e-9));
        }

        @Test
        @DisplayName("one pack of 12 damping sheets covers 1.8 m², a sheet 0.15 m² (common practice)")
        void packOfTwelve() {
            Material sheet = named("butyl-2");
            assertThat(sheet.inPack()).isEqualTo(12);
            assertThat(sheet.packArea()).isEqualTo(1.8, offset(1e-9));
            assertThat(sheet.size().get(0).si() * sheet.size().get(1).si()).isEqualTo(0.15, offset(1e-9));
        }

        @Test
        @DisplayName("2 mm butyl with 0.1 mm aluminium weighs 3.0 to 3.6 kg/m² (from memory)")
        void butylMass() {
            assertThat(named("butyl-2").surfaceDensity().si()).isBetween(3.0, 3.6);
            assertThat(named("butyl-2").damping().orElseThrow().facing().si()).isEqualTo(0.0001, offset(1e-12));
        }

        @ParameterizedTest(name = "{1} mm of {0}: {2} kg/m²")
        @CsvFileSource(resources = "sheet-mass.csv", useHeadersInDisplayName = true)
        @DisplayName("sheet metal weighs what its density says")
        void sheetMass(String material, double thickness, double mass) {
            Material sheet = named(material);
            assertThat(sheet.thickness().si()).isEqualTo(thickness / 1000, offset(1e-9));
            assertThat(sheet.surfaceDensity().si()).isEqualTo(mass, offset(0.005));
            assertThat(sheet.published()).containsKey("surface density");
        }

        @ParameterizedTest(name = "{0}, {1}: {2} to {3} kg/m³")
        @CsvFileSource(resources = "densities.csv", useHeadersInDisplayName = true)
        @DisplayName("mass over volume is what such stuff can have (from memory)")
        void densityRange(String layer, String cell, double from, double to) {
            List<Material> group = all().stream()
                    .filter(m -> m.layer().word().equals(layer) && Words.of(m.cell()).equals(cell)).toList();
            assertThat(group).isNotEmpty().allSatisfy(m -> assertThat(m.density())
                    .as(m.material()).isBetween(from, to));
        }

        @Test
        @DisplayName("no material lies outside the table of densities")
        void noneWithoutRange() throws IOException {
            String table = text("densities.csv");
            assertThat(all()).allSatisfy(m -> assertThat(table)
                    .contains("\n" + m.layer().word() + ", " + Words.of(m.cell()) + ", "));
        }

        @Test
        @DisplayName("what is published names a source that is on file, and something is")
        void publishedSources() throws IOException {
            String sources = text("/unthrum/rules/sources.yaml");
            assertThat(all().stream().flatMap(m -> m.published().values().stream())).isNotEmpty()
                    .allSatisfy(key -> assertThat(sources).contains("- source: " + key + "\n"));
        }

        private String text(String resource) throws IOException {
            try (var in = CatalogueTest.class.getResourceAsStream(resource)) {
                return new String(in.readAllBytes(), StandardCharsets.UTF_8);
            }
        }
    }

    @Nested
    @DisplayName("holds for every material")
    class EveryMaterial {
        /** Above this no sheet is held by adhesive; a fastened metal shield takes over. Common practice, no source. */
        private static final double HOTTEST_ADHESIVE = 120;

        @ParameterizedTest
        @MethodSource("unthrum.material.CatalogueTest#all")
        @DisplayName("nothing that is stuck on serves hotter than its adhesive")
        void adhesive(Material material) {
            if (material.bonding().sticks()) {
                assertThat(material.serviceTo().si()).isLessThanOrEqualTo(HOTTEST_ADHESIVE);
                assertThat(material.bondsFrom().orElseThrow().si()).isLessThan(material.serviceTo().si());
            } else {
                assertThat(material.bondsFrom()).isEmpty();
            }
        }

        @ParameterizedTest
        @MethodSource("unthrum.material.CatalogueTest#all")
        @DisplayName("the foam of a decoupler is a spring, and nothing else is")
        void springs(Material material) {
            assertThat(material.springModulus().isPresent()).isEqualTo(material.layer() == Layer.DECOUPLER);
        }

        @ParameterizedTest
        @MethodSource("unthrum.material.CatalogueTest#all")
        @DisplayName("a foam or a felt keeps heat as such stuff does, 0.03 to 0.06 W/mK (from memory)")
        void conductivity(Material material) {
            double k = material.conductivity().orElseThrow().si();
            if (material.cell() != Cell.SOLID && material.layer() != Layer.HEAT_SHIELD) {
                assertThat(k).isBetween(0.03, 0.06);
            } else {
                assertThat(k).isGreaterThan(0.06);
            }
        }

        @ParameterizedTest
        @MethodSource("unthrum.material.CatalogueTest#all")
        @DisplayName("its name is one word and no other's")
        void names(Material material) {
            assertThat(material.material()).matches("[a-z0-9.-]+");
            assertThat(CATALOGUE.find(material.material())).contains(material);
            assertThat(all().stream().filter(m -> m.material().equals(material.material()))).hasSize(1);
        }
    }

    @Nested
    @DisplayName("knows what damping sheets do in cold and heat")
    class Damping {
        @Test
        @DisplayName("every core softens as it warms")
        void softens() {
            assertThat(CATALOGUE.of(Layer.DAMPING)).isNotEmpty().allSatisfy(m -> {
                List<Double> moduli = points(m).stream().map(p -> p.shearModulus().si()).toList();
                assertThat(moduli).isSortedAccordingTo((a, b) -> Double.compare(b, a)).doesNotHaveDuplicates();
            });
        }

        @Test
        @DisplayName("butyl takes most out near room temperature, the hot grade a little higher (from memory)")
        void peaks() {
            assertThat(peak(named("butyl-2"))).isBetween(10.0, 30.0);
            assertThat(peak(named("butyl-2-hot"))).isBetween(20.0, 60.0);
            assertThat(lossAt(named("butyl-2-hot"), 80)).isGreaterThan(lossAt(named("butyl-2"), 80));
        }

        @Test
        @DisplayName("the data reach from -20 degC to where service ends")
        void range() {
            assertThat(CATALOGUE.of(Layer.DAMPING)).allSatisfy(m -> {
                Map<Boolean, Double> ends = points(m).stream().map(p -> p.temperature().si())
                        .collect(Collectors.partitioningBy(t -> t > 0, Collectors.reducing(0.0, CatalogueTest::wider)));
                assertThat(ends.get(false)).isLessThanOrEqualTo(-20);
                assertThat(ends.get(true)).isGreaterThanOrEqualTo(m.serviceTo().si());
            });
        }

        private List<Point> points(Material material) {
            return material.damping().orElseThrow().points();
        }

        private double peak(Material material) {
            return points(material).stream()
                    .max((a, b) -> Double.compare(a.lossFactor().si(), b.lossFactor().si())).orElseThrow()
                    .temperature().si();
        }

        private double lossAt(Material material, double temperature) {
            return points(material).stream().filter(p -> p.temperature().si() == temperature).findFirst()
                    .orElseThrow().lossFactor().si();
        }
    }

    private static double wider(double a, double b) {
        return Math.abs(a) > Math.abs(b) ? a : b;
    }
}
