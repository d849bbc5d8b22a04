package unthrum.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import unthrum.Scenarios;
import unthrum.derive.Derivation;
import unthrum.effect.Laid;
import unthrum.effect.Layup;
import unthrum.effect.VehicleAccount;
import unthrum.facts.Limit;
import unthrum.facts.Limit.Bound;
import unthrum.facts.Pairing;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.plan.LeftOut.Scarce;
import unthrum.plan.Proof.Standing;
import unthrum.reading.YamlReader;
import unthrum.survey.Survey;

@DisplayName("Plans that share")
class SharedPlansTest {

    private static final Path HATCHBACK = Path.of("scenarios/one-pack-hatchback.yaml");

    static List<Path> scenarios() {
        return Scenarios.files();
    }

    private static Plan plan(Path file) {
        return Scenarios.plan(file);
    }

    /** The hatchback with another stock and budget. */
    private static Plan hatchback(String stock, String money) throws IOException {
        String text = Files.readString(HATCHBACK).replace("stock:\n  - {material: butyl-2, sheets: 12}\n", stock)
                .replace("money: 45 EUR", "money: " + money);
        return Scenarios.PLANNER.plan(YamlReader.read("hatchback.yaml",
                new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), Survey.class));
    }

    private static VehicleAccount account(Survey survey) {
        return VehicleAccount.of(Scenarios.KNOWLEDGE, survey, new Derivation(Scenarios.KNOWLEDGE).of(survey));
    }

    private static double served(Plan plan) {
        return plan.shares().proof().served();
    }

    @Nested
    @DisplayName("every scenario")
    class EveryScenario {

        @ParameterizedTest
        @MethodSource("unthrum.plan.SharedPlansTest#scenarios")
        @DisplayName("is proved best within the solver's budget, to within the difference that nobody could tell")
        void isProved(Path file) {
            Proof proof = plan(file).shares().proof();
            assertThat(proof.isBest()).as("%s", proof).isTrue();
            assertThat(proof.bound() - proof.served()).isBetween(0.0, Scenarios.KNOWLEDGE.number("tell/shared"));
        }

        @ParameterizedTest
        @MethodSource("unthrum.plan.SharedPlansTest#scenarios")
        @DisplayName("keeps the client's limits and the payload")
        void keepsTheLimits(Path file) {
            Totals totals = plan(file).totals();
            double mass = plan(file).panels().stream().mapToDouble(p -> p.layup().mass()).sum();
            totals.massLimit().ifPresent(l -> assertThat(mass).isLessThanOrEqualTo(l.si()));
            totals.payload().ifPresent(l -> assertThat(mass).isLessThanOrEqualTo(l.si()));
            totals.roofLimit().ifPresent(l -> assertThat(totals.roof()).isLessThanOrEqualTo(l.si()));
            double price = plan(file).shopping().stream().mapToDouble(Purchase::price).sum();
            totals.moneyLimit().filter(m -> totals.moneyComparable())
                    .ifPresent(m -> assertThat(price).isLessThanOrEqualTo(m.amount().doubleValue()));
        }

        @ParameterizedTest
        @MethodSource("unthrum.plan.SharedPlansTest#scenarios")
        @DisplayName("keeps every pairing, and the room and mass of every panel: no decoupler without its barrier")
        void keepsThePairings(Path file) {
            for (PlannedPanel panel : plan(file).panels()) {
                List<Layer> layers = panel.layup().layers().stream().map(l -> l.layer()).toList();
                panel.advice().panel().all(Pairing.class).forEach(j -> assertThat(
                        ((Pairing) j.conclusion()).admits(Set.copyOf(layers))).as(panel.name()).isTrue());
                assertThat(panel.layup().thickness()).isLessThanOrEqualTo(least(panel, Bound.STACK_THICKNESS) + 1e-9);
                assertThat(panel.layup().mass()).isLessThanOrEqualTo(least(panel, Bound.MASS) + 1e-9);
                assertThat(layers).doesNotHaveDuplicates().isSorted();
            }
        }

        private static double least(PlannedPanel panel, Bound bound) {
            return panel.advice().panel().all(Limit.class).stream().map(j -> (Limit) j.conclusion())
                    .filter(l -> l.bound() == bound && !l.place().isVehicle()).mapToDouble(Limit::value).min()
                    .orElse(Double.POSITIVE_INFINITY);
        }

        @ParameterizedTest
        @MethodSource("unthrum.plan.SharedPlansTest#scenarios")
        @DisplayName("empties the shelf before it buys the same")
        void shelfFirst(Path file) {
            Plan plan = plan(file);
            for (Purchase purchase : plan.shopping()) {
                long shelf = Shopping.onShelf(plan.survey(), purchase.material());
                if (purchase.packs() > 0 && purchase.pieces() == 0) {
                    assertThat(purchase.shelf() * SharingProblem.AREA).isEqualTo(shelf);
                }
                double packs = purchase.packs() * purchase.material().packArea();
                assertThat(purchase.area()).isLessThanOrEqualTo(purchase.shelf() + packs + 1e-9);
            }
        }

        @ParameterizedTest
        @MethodSource("unthrum.plan.SharedPlansTest#scenarios")
        @DisplayName("leaves no patch short of damping while that sheet is left over and mass allows it")
        void noneLeftOver(Path file) {
            Plan plan = plan(file);
            plan.shares().leftOvers().forEach(l -> assertThat(plan.panels().stream()
                    .filter(p -> p.layup().of(Layer.DAMPING).filter(d -> d.material().equals(l.material())).isPresent())
                    .flatMap(p -> p.leftOut().stream()).filter(o -> o.material().equals(l.material()))
                    .filter(o -> o.why() == Scarce.MONEY && o.patch().area() < l.amount())).isEmpty());
        }

        @ParameterizedTest
        @MethodSource("unthrum.plan.SharedPlansTest#scenarios")
        @DisplayName("tells what each claim brings, and accounts for each that is not wholly served")
        void ranks(Path file) {
            Plan plan = plan(file);
            List<Shares.Ranked> ranking = plan.shares().ranking();
            assertThat(ranking).isNotEmpty().isSortedAccordingTo((a, b) -> Double.compare(b.brings(), a.brings()));
            assertThat(ranking.stream().mapToDouble(r -> r.brings() * r.served()).sum()
                    - plan.totals().price() * account(plan.survey()).leastForMoney())
                    .isCloseTo(served(plan), within(1e-4));
            long left = plan.panels().stream().mapToLong(p -> p.leftOut().size()).sum();
            assertThat(ranking.stream().filter(r -> r.served() < 1 - 1e-9)).hasSizeLessThanOrEqualTo((int) left);
        }
    }

    @Nested
    @DisplayName("one pack and hardly any money")
    class OnePack {

        @Test
        @DisplayName("puts the pack on the shelf to use, on the doors that ring beside the ear first")
        void usesTheShelf() {
            Plan plan = plan(HATCHBACK);
            Purchase sheets = plan.shopping().stream().filter(p -> p.material().material().equals("butyl-2")).findFirst()
                    .orElseThrow();
            assertThat(sheets.packs()).isZero();
            assertThat(sheets.shelf()).isGreaterThan(1);
            assertThat(plan.panel("door-front-left").orElseThrow().layup().has(Layer.DAMPING)).isTrue();
            assertThat(plan.panel("door-front-right").orElseThrow().layup().has(Layer.DAMPING)).isTrue();
        }

        @Test
        @DisplayName("serves more with every further sheet, and never less")
        void moreSheets() throws IOException {
            double before = -1;
            for (int sheets : new int[] {1, 2, 4, 8, 12, 24}) {
                double now = served(hatchback("stock: [{material: butyl-2, sheets: " + sheets + "}]\n", "45 EUR"));
                assertThat(now).as("%d sheets", sheets).isGreaterThanOrEqualTo(before);
                before = now;
            }
        }

        @Test
        @DisplayName("covers bays in part when there are too few sheets")
        void partCover() throws IOException {
            Plan plan = hatchback("stock: [{material: butyl-2, sheets: 2}]\n", "0 EUR");
            assertThat(plan.shares().ranking().stream().filter(r -> r.has(Layer.DAMPING)))
                    .anyMatch(r -> r.served() > 0 && r.served() < 1);
            assertThat(plan.totals().price()).isZero();
        }

        @Test
        @DisplayName("says what the next pack would bring, and where it would go")
        void nextPack() {
            List<Shares.NextPack> next = plan(HATCHBACK).shares().nextPacks();
            assertThat(next).isNotEmpty().isSortedAccordingTo((a, b) -> Double.compare(b.brings(), a.brings()))
                    .allSatisfy(p -> assertThat(p.brings()).isPositive())
                    .allSatisfy(p -> assertThat(p.places()).isNotEmpty());
        }

        @Test
        @DisplayName("with no money and an empty shelf lays nothing, and says for want of what")
        void nothingAtAll() throws IOException {
            Plan plan = hatchback("", "0 EUR");
            assertThat(plan.totals().price()).isZero();
            assertThat(plan.shopping()).isEmpty();
            assertThat(plan.panels()).allSatisfy(p -> assertThat(p.layup().isEmpty()).isTrue());
            assertThat(plan.panels().stream().flatMap(p -> p.leftOut().stream())).isNotEmpty()
                    .allSatisfy(l -> assertThat(l.why()).isEqualTo(Scarce.MONEY));
            assertThat(plan.shares().proof().standing()).isEqualTo(Standing.PROVED_BEST);
        }
    }

    @Nested
    @DisplayName("a roof that wants more than there is money for")
    class DearRoof {

        private static final String ROOF = """
                survey: A van that people sleep in
                vehicle: {body: van, drive: diesel, use: [lived in, daily], payload left: 300 kg}
                aims: [winter cold, road drumming]
                limits: {money: %s}
                panels:
                  - panel: roof
                    zone: roof
                    skin: {metal: aluminium, gauge: 1.2 mm}
                    size: [2400 mm, 1600 mm]
                    shape: flat
                    ribs: [{kind: top hat, runs: across, at: 800 mm, width: 40 mm}]
                    tap: [rings, rings]
                    clearance: 25 mm
                    clearance to: lining
                    behind: none
                    surface: {old: none}
                """;

        private static Set<Layer> layers(Stream<Material> materials) {
            return materials.map(Material::layer).collect(Collectors.toSet());
        }

        @ParameterizedTest(name = "{0}")
        @ValueSource(strings = {"0 EUR", "80 EUR", "120 EUR", "160 EUR"})
        @DisplayName("is told of every layer that it goes without, though the search left some materials out beforehand")
        void leftOut(String money) {
            PlannedPanel rich = plan("10000 EUR");
            PlannedPanel poor = plan(money);
            Set<Layer> told = layers(Stream.concat(poor.layup().layers().stream().map(Laid::material),
                    poor.leftOut().stream().map(LeftOut::material)));
            assertThat(told).containsAll(layers(rich.layup().layers().stream().map(Laid::material)));
            assertThat(poor.leftOut()).isNotEmpty().allMatch(l -> l.why() == Scarce.MONEY);
        }

        private static PlannedPanel plan(String money) {
            return Scenarios.PLANNER.plan(YamlReader.read("roof.yaml", new ByteArrayInputStream(
                    ROOF.formatted(money).getBytes(StandardCharsets.UTF_8)), Survey.class)).panels().get(0);
        }
    }

    @Nested
    @DisplayName("the house set")
    class House {

        private final Plan bus;
        private final AlikeOffers alike;

        House() {
            bus = Scenarios.PLANNER.plan(Scenarios.plenty(Path.of("scenarios/country-bus.yaml")));
            alike = new AlikeOffers(Scenarios.KNOWLEDGE, account(bus.survey()));
        }

        @Test
        @DisplayName("gives each panel a layup that serves it as well, of the same layers")
        void alike() {
            for (PlannedPanel panel : bus.panels()) {
                if (!panel.layup().isEmpty()) {
                    assertThat(HouseSet.sameLayers(panel.advice(), alike).stream().map(Object::toString))
                            .contains(panel.layup().toString());
                }
            }
        }

        @Test
        @DisplayName("needs no more materials than the panels' own first choices")
        void fewer() {
            List<PlannedPanel> panels = bus.panels();
            long settled = panels.stream().flatMap(p -> p.layup().layers().stream()).map(l -> l.material().material())
                    .distinct().count();
            long own = panels.stream().flatMap(p -> HouseSet.sameLayers(p.advice(), alike).stream()
                    .min(Comparator.comparingDouble(Layup::price)).stream())
                    .flatMap(l -> l.layers().stream()).map(l -> l.material().material()).distinct().count();
            assertThat(settled).isLessThan(own);
        }
    }
}
