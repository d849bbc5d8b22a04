package unthrum.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import unthrum.material.Catalogue;
import unthrum.material.Material;
import unthrum.material.Material.DampingData;
import unthrum.physics.Bay;
import unthrum.physics.CompositeLoss;
import unthrum.physics.Coverage;
import unthrum.physics.Sheet;
import unthrum.physics.Skin;
import unthrum.physics.Support;
import unthrum.reading.Quantity;

@DisplayName("Numbers of the rules against their sources")
class PublishedNumbersTest {

    private static final Knowledge KNOWLEDGE = Knowledge.load();

    @Test
    @DisplayName("interior material burns no faster than 102 mm/min (49 CFR 571.302, S4.3)")
    void burning() {
        assertThat(KNOWLEDGE.number("heat/burning-rate") * 1000 * 60).isCloseTo(102, within(1e-9));
    }

    @Test
    @DisplayName("acetone can be lit from -18 °C, closed cup (ICSC 0087, from memory)")
    void flashPoint() {
        assertThat(KNOWLEDGE.number("workshop/acetone-flash-point")).isCloseTo(-18, within(1e-9));
    }

    @Test
    @DisplayName("the open share at which a wall is tested for light caps it at 20 dB: 10 lg(1/0.01) (Bies and Hansen)")
    void openShare() {
        assertThat(CompositeLoss.ceiling(KNOWLEDGE.number("sealing/open-share"))).isCloseTo(20, within(1e-9));
    }

    @Test
    @DisplayName("one sheet is a twelfth of a pack that covers 1.8 m² (common practice)")
    void oneSheet() {
        assertThat(KNOWLEDGE.number("damping/one-sheet")).isCloseTo(1.8 / 12, within(1e-12));
    }

    @Test
    @DisplayName("the top of the drone: a four-stroke with four cylinders fires twice a turn, so 4500 rpm is 150 Hz")
    void drone() {
        assertThat(KNOWLEDGE.number("damping/drone-top")).isCloseTo(4500 / 60.0 * 2, within(1e-9));
    }

    @Test
    @DisplayName("the patch in a flat bay with hinged edges ends near half of it, as a guide has it, by the knee's slope")
    void knee() {
        Skin skin = Sheet.steel(0.0008).skin();
        List<Bay> bays = List.of(Bay.flat(0.5, 0.5), Bay.flat(0.7, 0.5), Bay.flat(1, 0.5), Bay.flat(1.5, 0.4));
        assertThat(bays).allSatisfy(bay -> {
            Coverage coverage = Coverage.of(skin, bay, Support.HINGED_FIXED).value();
            assertThat(Coverage.knee(coverage::share, KNOWLEDGE.number("damping/knee"))).isBetween(0.45, 0.55);
            assertThat(slope(coverage, 0.5)).isBetween(0.57, 0.72);
            assertThat(slope(coverage, 0.75)).isBetween(0.22, 0.64);
        });
    }

    private static double slope(Coverage coverage, double at) {
        return (coverage.share(at + 0.02) - coverage.share(at - 0.02)) / 0.04;
    }

    @Test
    @DisplayName("the lightest barrier takes 3 dB, barely perceptible, off a skin of 5 to 8 kg/m² by the mass law")
    void leastBarrier() {
        double weight = KNOWLEDGE.number("barrier/least-weight");
        assertThat(20 * Math.log10(1 + weight / 5)).isGreaterThan(3);
        assertThat(20 * Math.log10(1 + weight / 8)).isCloseTo(3, within(0.3));
    }

    /** Values are rounded as the catalogue writes them: a mass per area to 0.05 kg/m², which is 1 % of the thinnest. */
    private static final double ROUNDING = 0.015;
    private static final double FACING = 2700;

    @Nested
    @DisplayName("a threshold with a published source")
    class Thresholds {
        @ParameterizedTest(name = "{0}: {1} to {2} {3} ({4}, {5})")
        @CsvFileSource(resources = "published-thresholds.csv", useHeadersInDisplayName = true)
        @DisplayName("lies in the published range")
        void inRange(String id, String from, String to, String unit, String source, String where) {
            assertThat(KNOWLEDGE.threshold(id).source()).isEqualTo(source);
            assertInRange(id + ", " + where, KNOWLEDGE.number(id), from, to, unit == null ? "" : unit, 0);
        }

        @Test
        @DisplayName("has its row, and nothing else has one")
        void complete() {
            assertThat(column("published-thresholds.csv", 0)).containsExactlyInAnyOrderElementsOf(
                    KNOWLEDGE.thresholds().stream().filter(t -> !Source.MARKS.contains(t.source()))
                            .map(ThresholdEntry::threshold).toList());
        }
    }

    @Nested
    @DisplayName("a threshold that nobody published")
    class Tried {
        @Test
        @DisplayName("says what range was tried and what it changes, and no other does")
        void tried() {
            assertThat(KNOWLEDGE.thresholds()).allSatisfy(t -> {
                if (Source.MARKS.contains(t.source())) {
                    assertThat(t.tried()).as(t.threshold()).isPresent();
                    assertThat(t.tried().orElseThrow()).as(t.threshold())
                            .matches("-?[0-9].* to -?[0-9].*; (no|1|[0-9]+) panels? of [0-9]+ changes?");
                } else {
                    assertThat(t.tried()).as(t.threshold()).isEmpty();
                }
            });
        }
    }

    @Nested
    @DisplayName("a property of a material with a published source")
    class Materials {
        private static final Map<String, Material> CATALOGUE = Catalogue.load().all().stream()
                .collect(Collectors.toMap(Material::material, m -> m));

        @ParameterizedTest(name = "{1} of {0}: {2} to {3} {4} ({5}, {6})")
        @CsvFileSource(resources = "published-materials.csv", useHeadersInDisplayName = true)
        @DisplayName("lies in the published range")
        void inRange(String materials, String property, String from, String to, String unit, String source,
                     String where) {
            assertThat(List.of(materials.split(" "))).allSatisfy(name -> {
                Material material = CATALOGUE.get(name);
                assertThat(material.published()).as(name).containsEntry(property, source);
                assertInRange(name + ", " + where, value(material, property), from, to, unit,
                        property.equals("surface density") ? ROUNDING : 0);
            });
        }

        @Test
        @DisplayName("has its row, and is there for nearly every material")
        void complete() {
            Map<String, Set<String>> rows = new TreeMap<>();
            List<String> materials = column("published-materials.csv", 0);
            List<String> properties = column("published-materials.csv", 1);
            for (int i = 0; i < materials.size(); i++) {
                for (String name : materials.get(i).split(" ")) {
                    assertThat(rows.computeIfAbsent(name, n -> new TreeSet<>()).add(properties.get(i)))
                            .as(name + " " + properties.get(i)).isTrue();
                }
            }
            assertThat(CATALOGUE.values()).allSatisfy(m -> assertThat(rows.getOrDefault(m.material(), Set.of()))
                    .as(m.material()).isEqualTo(m.published().keySet()));
            assertThat(CATALOGUE.values().stream().filter(m -> m.published().isEmpty()).count())
                    .isLessThanOrEqualTo(6);
        }

        /** The property in SI; for a mass per area the density, of a faced damping sheet without its facing. */
        private static double value(Material m, String property) {
            double facing = m.damping().map(DampingData::facing).map(Quantity::si).orElse(0.0);
            return switch (property) {
                case "surface density" ->
                        (m.surfaceDensity().si() - facing * FACING) / (m.thickness().si() - facing);
                case "service from" -> m.serviceFrom().si();
                case "service to" -> m.serviceTo().si();
                case "bonds from" -> m.bondsFrom().orElseThrow().si();
                case "burn rate" -> m.burnRate().orElseThrow().si();
                case "spring modulus" -> m.springModulus().orElseThrow().si();
                case "conductivity" -> m.conductivity().orElseThrow().si();
                case "emissivity" -> m.emissivity().orElseThrow().si();
                default -> throw new IllegalArgumentException("no check for '" + property + "'");
            };
        }
    }

    private static void assertInRange(String what, double value, String from, String to, String unit, double slack) {
        assertThat(from != null || to != null).as(what).isTrue();
        if (from != null) {
            double low = Quantity.of((from + " " + unit).strip()).si();
            assertThat(value).as(what).isGreaterThanOrEqualTo(low - slack * Math.abs(low) - 1e-12);
        }
        if (to != null) {
            double high = Quantity.of((to + " " + unit).strip()).si();
            assertThat(value).as(what).isLessThanOrEqualTo(high + slack * Math.abs(high) + 1e-12);
        }
    }

    /** The cells of one of the first columns, which hold no comma, below the header. */
    private static List<String> column(String file, int column) {
        try (InputStream in = PublishedNumbersTest.class.getResourceAsStream(file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().filter(l -> !l.startsWith("#")).skip(1)
                    .map(l -> l.split(",")[column]).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
