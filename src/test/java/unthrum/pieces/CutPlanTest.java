package unthrum.pieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import unthrum.Scenarios;
import unthrum.cutting.CutRule;
import unthrum.cutting.LayoutCheck;
import unthrum.cutting.SheetLayout;
import unthrum.cutting.Stock;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.plan.Plan;
import unthrum.effect.Laid;

@DisplayName("Cutting a whole vehicle")
class CutPlanTest {

    static List<Path> scenarios() {
        return Scenarios.files();
    }

    @Nested
    @DisplayName("every scenario")
    class EveryScenario {

        @ParameterizedTest
        @MethodSource("unthrum.pieces.CutPlanTest#scenarios")
        @DisplayName("gives layouts that pass the independent check, with free cuts and with cuts from edge to edge")
        void sound(Path file) {
            for (CutRule rule : CutRule.values()) {
                CutPlan cut = Bench.cut(Scenarios.plan(file), Wishes.usual().cuts(rule));
                assertThat(cut.cuts()).isNotEmpty().allSatisfy(c -> {
                    assertThat(c.layout().task().cuts()).isEqualTo(rule);
                    assertThat(LayoutCheck.faults(c.layout())).isEmpty();
                });
            }
        }

        @ParameterizedTest
        @MethodSource("unthrum.pieces.CutPlanTest#scenarios")
        @DisplayName("cuts what the plan covers, material by material, but for cut-outs and whole millimetres")
        void areas(Path file) {
            Plan plan = Scenarios.plan(file);
            Map<Material, Double> covered = plan.panels().stream().flatMap(p -> p.layup().layers().stream())
                    .collect(Collectors.groupingBy(Laid::material, Collectors.summingDouble(Laid::area)));
            Map<Material, List<CutPiece>> pieces = Bench.pieces(plan).pieces().stream()
                    .collect(Collectors.groupingBy(CutPiece::material));
            assertThat(pieces.keySet()).isEqualTo(covered.keySet());
            covered.forEach((material, area) -> {
                double boxes = pieces.get(material).stream().mapToDouble(p -> p.box().area()).sum();
                assertThat(boxes).as(material.material()).isCloseTo(area, within(0.004 * area + 0.001));
                assertThat(pieces.get(material)).allSatisfy(p -> assertThat(p.area())
                        .isGreaterThan(p.box().area() - p.clearings().stream()
                                .mapToDouble(c -> c.length() * c.width() / 1e6).sum() - 1e-9));
            });
        }

        @ParameterizedTest
        @MethodSource("unthrum.pieces.CutPlanTest#scenarios")
        @DisplayName("buys no more than the client's money allows, and names every piece that this leaves out")
        void money(Path file) {
            Plan plan = Scenarios.plan(file);
            CutPlan cut = Bench.cut(plan, Wishes.usual());
            List<CutPiece> missing = cut.cuts().stream().flatMap(c -> c.unplaced().stream()).toList();
            assertThat(cut.shortfalls().stream().flatMap(s -> s.pieces().stream()))
                    .containsExactlyInAnyOrderElementsOf(missing);
            if (plan.totals().moneyLimit().isPresent() && plan.totals().moneyComparable()) {
                double closers = plan.shopping().stream().filter(p -> p.pieces() > 0).mapToDouble(p -> p.price()).sum();
                assertThat(cut.cuts().stream().mapToDouble(MaterialCut::price).sum() + closers)
                        .isLessThanOrEqualTo(plan.totals().moneyLimit().get().amount().doubleValue());
            }
        }
    }

    @Nested
    @DisplayName("what lies on the shelf")
    class Shelf {

        private static final String PANEL = Bench.panel("floor", 600, 500, "ribs: none");

        private static MaterialCut cut(String stock, String material) {
            Plan plan = Bench.advised("stock: [" + stock + "]\n", PANEL);
            return Bench.cut(Bench.with(material, 1, plan), Wishes.usual()).cuts().get(0);
        }

        @Test
        @DisplayName("is cut before anything is bought: two sheets there, none to buy")
        void sheets() {
            MaterialCut cut = cut("{material: butyl-2, sheets: 2}", "butyl-2");
            assertThat(cut.shelf()).isEqualTo(2);
            assertThat(cut.packs()).isZero();
        }

        @Test
        @DisplayName("where an odd offcut takes the piece, no sheet is opened")
        void offcut() {
            MaterialCut cut = cut("{material: eva-foam-3, size: [620 mm, 510 mm]}", "eva-foam-3");
            assertThat(cut.layout().sheets()).extracting(s -> s.stock().kind()).containsExactly(Stock.Kind.OFFCUT);
            assertThat(cut.bought()).isZero();
        }

        @Test
        @DisplayName("the rest of a roll is cut before a new one is opened")
        void restOfRoll() {
            MaterialCut cut = cut("{material: pe-foam-6, length: 700 mm}", "pe-foam-6");
            assertThat(cut.packs()).isZero();
            assertThat(cut.rollLength()).isBetween(0.5, 0.7);
        }

        @Test
        @DisplayName("a face too large for one offcut is joined from two")
        void joined() {
            MaterialCut cut = cut("{material: eva-foam-3, size: [610 mm, 300 mm], sheets: 2}", "eva-foam-3");
            assertThat(cut.unplaced()).isEmpty();
            assertThat(cut.bought()).isZero();
            assertThat(cut.pieces()).extracting(CutPiece::number).containsExactly("1a", "1b");
        }
    }

    @Nested
    @DisplayName("the search")
    class TheSearch {

        private final Plan plan = Scenarios.plan("shell-pickup");

        private static List<List<SheetLayout>> layouts(CutPlan cut) {
            return cut.cuts().stream().map(c -> c.layout().sheets()).toList();
        }

        @Test
        @DisplayName("gives the same layouts for the same seed")
        void sameSeed() {
            assertThat(layouts(Bench.cut(plan, Wishes.usual()))).isEqualTo(layouts(Bench.cut(plan, Wishes.usual())));
        }

        @Test
        @DisplayName("ends at once when it is asked to, with sound layouts")
        void cancelled() {
            Wishes hurried = new Wishes(CutRule.FREE, Optional.empty(), 1, Optional.empty(), p -> { }, () -> true);
            assertThat(Bench.cut(plan, hurried).cuts()).allSatisfy(c -> {
                assertThat(LayoutCheck.faults(c.layout())).isEmpty();
                assertThat(c.layout().sheets()).isNotEmpty();
            });
        }

        @Test
        @DisplayName("keeps the gap that the tool takes")
        void gap() {
            Wishes wide = new Wishes(CutRule.GUILLOTINE, Optional.of(0.004), 1, Optional.empty(), p -> { }, () -> false);
            assertThat(Bench.cut(plan, wide).cuts()).allSatisfy(c -> {
                assertThat(c.layout().task().knifeMargin()).isEqualTo(40);
                assertThat(LayoutCheck.faults(c.layout())).isEmpty();
            });
        }
    }

    @Nested
    @DisplayName("the list of what to buy")
    class Buying {

        @Test
        @DisplayName("counts a pack of 12 sheets of 500 by 300 mm as 1.8 m² (common practice, no source)")
        void pack() {
            CutPlan cut = Bench.cut("butyl-2", 1, Bench.panel("floor", 1500, 1200, "ribs: none"));
            assertThat(cut.cuts().get(0).bought()).isEqualTo(12);
            assertThat(cut.cuts().get(0).packs()).isEqualTo(1);
            assertThat(cut.cuts().get(0).waste()).isCloseTo(0, within(1e-9));
            assertThat(cut.cuts().get(0).area()).isCloseTo(1.8, within(1e-9));
        }

        @Test
        @DisplayName("weighs and prices what is cut: 1.8 m² of a sheet of 3.3 kg/m² in one pack")
        void massAndPrice() {
            MaterialCut cut = Bench.cut("butyl-2", 1, Bench.panel("floor", 1500, 1200, "ribs: none")).cuts().get(0);
            assertThat(cut.mass()).isCloseTo(1.8 * cut.material().surfaceDensity().si(), within(1e-9));
            assertThat(cut.price()).isEqualTo(cut.material().price().amount().doubleValue());
        }

        @Test
        @DisplayName("of a roll counts the length that is cut off, and the rest of it is no waste")
        void roll() {
            MaterialCut cut = Bench.cut("nitrile-foam-10", 1, Bench.panel("side", 2000, 1000, "ribs: none")).cuts().get(0);
            assertThat(cut.rollLength()).isCloseTo(2, within(1e-9));
            assertThat(cut.waste()).isCloseTo(0, within(1e-9));
            assertThat(cut.packs()).isEqualTo(1);
        }

        @Test
        @DisplayName("counts contact adhesive for both faces at 0.18 litres on a square metre of each (data sheet)")
        void adhesive() {
            Supplies supplies = Bench.cut("vinyl-barrier-2-bonded", 1, Bench.panel("floor", 1000, 1000, "ribs: none"))
                    .supplies();
            assertThat(supplies.adhesive() + supplies.hotAdhesive()).isCloseTo(0.36, within(1e-9));
        }
    }

    @Nested
    @DisplayName("where stock runs short and there is no money")
    class Short {

        private static final String[] PANELS = {floor("floor-a", "near ear: no"), floor("floor-b", "near ear: yes"),
            floor("floor-c", "near ear: no"), floor("floor-d", "near ear: yes")};

        private static String floor(String name, String ear) {
            return Bench.panel(name, 500, 600, "ribs: none", "tap: rings", "clearance: 20 mm",
                    "clearance to: carpet", "near noise: road", ear, "heat: none", "reach: open", "wet: dry",
                    "openings: none", "fixings: none", "behind: none",
                    "surface: {paint: sound, dirt: dust, rust: none, old: none}");
        }

        private static CutPlan cut(String stock) {
            return Bench.cut(Bench.with("butyl-2", 0.5, Bench.advised("limits: {money: 0 EUR}\nstock: [" + stock
                    + "]\n", PANELS)), Wishes.usual());
        }

        private static List<String> panels(List<CutPiece> pieces) {
            return pieces.stream().map(p -> p.place().panel()).distinct().sorted().toList();
        }

        @Test
        @DisplayName("the bays that the plan ranks last go without, whatever the layout would like")
        void lastInRank() {
            CutPlan cut = cut("{material: butyl-2, size: [430 mm, 360 mm], sheets: 2}");
            assertThat(cut.plan().shares().ranking().stream().filter(r -> r.has(Layer.DAMPING))
                    .map(r -> r.place().panel())).startsWith("floor-b", "floor-d");
            assertThat(panels(cut.cuts().get(0).unplaced())).containsExactly("floor-a", "floor-c");
            assertThat(LayoutCheck.faults(cut.cuts().get(0).layout())).isEmpty();
        }

        @Test
        @DisplayName("what room is left goes to a part of the next in rank")
        void restOfRoom() {
            CutPlan cut = cut("{material: butyl-2, size: [430 mm, 360 mm], sheets: 2}, "
                    + "{material: butyl-2, size: [430 mm, 190 mm]}");
            MaterialCut butyl = cut.cuts().get(0);
            List<String> placed = panels(butyl.pieces().stream().filter(p -> !butyl.unplaced().contains(p)).toList());
            assertThat(placed).containsExactly("floor-a", "floor-b", "floor-d");
            assertThat(panels(butyl.unplaced())).containsExactly("floor-a", "floor-c");
        }
    }

    @Nested
    @DisplayName("what cannot be")
    class Impossible {

        @Test
        @DisplayName("a heat shield larger than any sheet is named, since shields are not joined")
        void tooLarge() {
            CutPlan cut = Bench.cut("aluminium-shield-1", 1, Bench.panel("tunnel", 1400, 400, "ribs: none"));
            assertThat(cut.shortfalls()).singleElement().satisfies(s -> {
                assertThat(s.tooLarge()).isTrue();
                assertThat(s.pieces()).extracting(CutPiece::name).containsExactly("1 tunnel");
            });
        }
    }
}
