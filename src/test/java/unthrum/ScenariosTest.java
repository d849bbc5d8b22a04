package unthrum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import unthrum.material.Catalogue;
import unthrum.reading.YamlReader;
import unthrum.survey.Curve;
import unthrum.survey.FixingKind;
import unthrum.survey.Hazard;
import unthrum.survey.HeatSource;
import unthrum.survey.Holder;
import unthrum.survey.OldLayer;
import unthrum.survey.OpeningKind;
import unthrum.survey.PanelEntry;
import unthrum.survey.Reach;
import unthrum.survey.Run;
import unthrum.survey.Rust;
import unthrum.survey.StockEntry;
import unthrum.survey.Survey;
import unthrum.survey.Tap;
import unthrum.survey.Zone;

@DisplayName("The shipped scenarios")
class ScenariosTest {
    private static final List<Path> SCENARIOS = Scenarios.files();

    private static Survey read(Path file) {
        return YamlReader.read(file, Survey.class);
    }

    @Nested
    @DisplayName("a scenario")
    class Scenario {
        private static final List<Path> FILES = SCENARIOS;

        @ParameterizedTest
        @FieldSource("FILES")
        @DisplayName("has 15 to 45 panels, each with a name of its own, of many sizes")
        void panels(Path file) {
            List<PanelEntry> panels = read(file).panels();
            assertThat(panels).hasSizeBetween(15, 45);
            assertThat(panels).extracting(PanelEntry::panel).doesNotHaveDuplicates();
            assertThat(panels.stream().map(PanelEntry::size).distinct().count()).isGreaterThan(panels.size() / 2);
        }

        @ParameterizedTest
        @FieldSource("FILES")
        @DisplayName("has its ribs in order inside the panel, and one answer for each bay or one for all")
        void ribs(Path file) {
            assertThat(read(file).panels()).allSatisfy(panel -> {
                List<PanelEntry.Rib> ribs = panel.ribs().orElse(List.of());
                for (Run run : Run.values()) {
                    List<Double> at = ribs.stream().filter(r -> r.runs() == run).map(r -> r.at().si()).toList();
                    double side = panel.size().get(run == Run.ACROSS ? 0 : 1).si();
                    assertThat(at).as(panel.panel()).isSorted().allSatisfy(a -> assertThat(a).isBetween(0.0, side));
                }
                panel.tap().ifPresent(taps -> assertThat(taps).as(panel.panel())
                        .satisfiesAnyOf(t -> assertThat(t).hasSize(1), t -> assertThat(t).hasSize(bays(ribs))));
            });
        }

        private int bays(List<PanelEntry.Rib> ribs) {
            int across = (int) ribs.stream().filter(r -> r.runs() == Run.ACROSS).count();
            return (across + 1) * (ribs.size() - across + 1);
        }

        @ParameterizedTest
        @FieldSource("FILES")
        @DisplayName("has only materials of the catalogue in stock, enough of a roll or whole sheets")
        void stock(Path file) {
            Catalogue catalogue = Catalogue.load();
            assertThat(read(file).stock().orElseThrow()).allSatisfy(entry -> {
                assertThat(catalogue.find(entry.material())).isPresent();
                assertThat(entry.sheets().isPresent()).isNotEqualTo(entry.length().isPresent());
            });
        }

        @ParameterizedTest
        @FieldSource("FILES")
        @DisplayName("says that it is invented and bounds mass and money")
        void head(Path file) throws IOException {
            assertThat(Files.readString(file)).startsWith("# ").contains("Invented, not a real vehicle.");
            assertThat(read(file).limits().orElseThrow().addedMass()).isPresent();
            assertThat(read(file).limits().orElseThrow().money()).isPresent();
        }

        @ParameterizedTest
        @FieldSource("FILES")
        @DisplayName("lays at least nine kinds of trap")
        void trapsInEach(Path file) {
            List<PanelEntry> panels = read(file).panels();
            assertThat(traps().entrySet().stream().filter(trap -> panels.stream().anyMatch(trap.getValue()))
                    .map(Map.Entry::getKey).toList()).hasSizeGreaterThanOrEqualTo(9);
        }
    }

    @Nested
    @DisplayName("together the scenarios")
    class Together {
        @Test
        @DisplayName("lay every kind of trap in at least two of them")
        void traps() {
            Map<String, Long> scenariosWith = new HashMap<>();
            ScenariosTest.traps().forEach((name, trap) -> scenariosWith.put(name, SCENARIOS.stream()
                    .filter(file -> read(file).panels().stream().anyMatch(trap)).count()));
            assertThat(scenariosWith).allSatisfy((name, count) -> assertThat(count).as(name).isGreaterThan(1));
        }

        @Test
        @DisplayName("hold a whole vehicle measured in inches and degrees Fahrenheit")
        void inches() throws IOException {
            String text = Files.readString(Path.of("scenarios/shell-pickup.yaml"));
            assertThat(text).contains(" in,", " degF", " lb").doesNotContain(" mm", " degC", " kg");
            // 0.036 in is 0.9144 mm and 190 °F is 87.8 °C: exact factors, NIST SP 811, appendix B
            PanelEntry roof = read(Path.of("scenarios/shell-pickup.yaml")).panels().get(0);
            assertThat(roof.skin().orElseThrow().gauge().orElseThrow().si())
                    .isEqualTo(0.0009144, within(1e-12));
            assertThat(roof.heat().orElseThrow().peak().orElseThrow().toString()).isEqualTo("88 °C");
        }

        @Test
        @DisplayName("give the small hatchback one pack of twelve sheets")
        void onePack() {
            assertThat(read(Path.of("scenarios/one-pack-hatchback.yaml")).stock().orElseThrow())
                    .containsExactly(new StockEntry("butyl-2", Optional.of(12), Optional.empty(), Optional.empty()));
        }
    }

    private static Map<String, Predicate<PanelEntry>> traps() {
        Map<String, Predicate<PanelEntry>> traps = new LinkedHashMap<>();
        traps.put("a crowned panel that rings", p -> p.shape().filter(s -> s.curve() == Curve.CROWNED).isPresent()
                && p.tap().filter(taps -> taps.contains(Tap.RINGS)).isPresent());
        traps.put("a bulkhead that nobody reaches", p -> p.zone() == Zone.BULKHEAD
                && p.reach().equals(Optional.of(Reach.NONE)));
        traps.put("a drain beside a cable hole", p -> has(p, OpeningKind.DRAIN) && has(p, OpeningKind.CABLE_HOLE));
        traps.put("seat bolts", p -> p.fixings().orElse(List.of()).stream()
                .anyMatch(f -> f.kind() == FixingKind.SEAT_BOLT));
        traps.put("a service hatch", p -> !p.covers().orElse(List.of()).isEmpty());
        traps.put("a hot floor", p -> List.of(Zone.FLOOR, Zone.FOOTWELL, Zone.TUNNEL).contains(p.zone())
                && p.heat().filter(h -> h.from() != HeatSource.NONE).flatMap(PanelEntry.Heat::peak)
                        .filter(peak -> peak.si() > 100).isPresent());
        traps.put("room for foam only", p -> clearanceBetween(p, 0.004, 0.008));
        traps.put("room for nothing", p -> clearanceBetween(p, 0, 0.003));
        traps.put("unknown room", p -> p.clearance().isEmpty());
        traps.put("a curtain airbag", p -> p.behind().orElse(List.of()).contains(Hazard.CURTAIN_AIRBAG));
        traps.put("live rust", p -> p.surface().flatMap(PanelEntry.SurfaceEntry::rust)
                .equals(Optional.of(Rust.LIVE)));
        traps.put("old pads of unknown age", p -> p.surface().flatMap(PanelEntry.SurfaceEntry::old)
                .equals(Optional.of(OldLayer.UNKNOWN_PADS)));
        traps.put("a divided roof tapped bay by bay", p -> p.zone() == Zone.ROOF
                && p.tap().filter(taps -> taps.stream().distinct().count() > 1).isPresent());
        traps.put("a lid on struts", p -> p.lid().filter(l -> l.holder() == Holder.STRUTS).isPresent());
        return traps;
    }

    private static boolean has(PanelEntry panel, OpeningKind kind) {
        return panel.openings().orElse(List.of()).stream().anyMatch(o -> o.kind() == kind);
    }

    private static boolean clearanceBetween(PanelEntry panel, double above, double to) {
        return panel.clearance().filter(c -> c.si() > above && c.si() <= to).isPresent();
    }
}
