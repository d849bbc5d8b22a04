package unthrum.pieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import unthrum.plan.Plan;

@DisplayName("Pieces from bays and their cover")
class PiecesTest {

    private static final double ROUNDING = 0.002;

    private static List<CutPiece> pieces(String material, double coverage, String... panels) {
        return Bench.pieces(Bench.with(material, coverage, panels)).pieces();
    }

    private static double area(List<CutPiece> pieces) {
        return pieces.stream().mapToDouble(CutPiece::area).sum();
    }

    @Nested
    @DisplayName("a damping patch")
    class DampingPatch {

        @Test
        @DisplayName("lies in the middle of its bay and covers the share that the plan gives")
        void middle() {
            CutPiece piece = pieces("butyl-2", 0.36, Bench.panel("floor", 500, 400, "ribs: none")).get(0);
            assertThat(piece.box()).isEqualTo(new Box(100, 80, 300, 240));
            assertThat(piece.number()).isEqualTo("1");
        }

        @Test
        @DisplayName("is stretched a little where it then takes whole widths of a sheet")
        void stretched() {
            List<CutPiece> pieces = pieces("butyl-2", 0.5, Bench.panel("door", 1050, 520, "ribs: none"));
            assertThat(pieces).extracting(p -> p.box().length() + " x " + p.box().width())
                    .containsExactly("500 x 300", "410 x 300");
            assertThat(pieces).extracting(CutPiece::number).containsExactly("1a", "1b");
            assertThat(area(pieces)).isCloseTo(1.05 * 0.52 * 0.5, within(ROUNDING));
        }

        @Test
        @DisplayName("lies in each bay by itself and leaves the rib bare")
        void bays() {
            List<CutPiece> pieces = pieces("butyl-2", 0.5, Bench.panel("floor", 840, 300,
                    "ribs: [{kind: bead, runs: across, at: 420 mm, width: 40 mm}]"));
            assertThat(pieces).extracting(p -> p.place().part()).containsExactly("bay 1", "bay 2");
            assertThat(pieces.get(0).box().alongEnd()).isLessThan(400);
            assertThat(pieces.get(1).box().along()).isGreaterThan(440);
        }
    }

    @Nested
    @DisplayName("a layer over the whole face")
    class WholeFace {

        @Test
        @DisplayName("is one piece where the roll is wide enough")
        void onePiece() {
            List<CutPiece> pieces = pieces("vinyl-barrier-2", 1, Bench.panel("floor", 2000, 1100, "ribs: none"));
            assertThat(pieces).extracting(CutPiece::box).containsExactly(new Box(0, 0, 2000, 1100));
        }

        @Test
        @DisplayName("is parted where it is larger than the roll, and never into a sliver")
        void parted() {
            List<CutPiece> pieces = pieces("vinyl-barrier-2", 1, Bench.panel("floor", 2500, 1210, "ribs: none"));
            assertThat(pieces).hasSize(2).allSatisfy(p ->
                    assertThat(Math.min(p.box().length(), p.box().width())).isBetween(Joints.LEAST, 1200));
            assertThat(area(pieces)).isCloseTo(2.5 * 1.21, within(1e-9));
            assertThat(SupplyList.joints(pieces)).isCloseTo(2.5, within(1e-9));
        }

        @Test
        @DisplayName("ends on both sides of a rib that the lining bears on")
        void bareRib() {
            List<CutPiece> pieces = pieces("nitrile-foam-10", 1, Bench.panel("roof", 1000, 800,
                    "ribs: [{kind: top hat, runs: across, at: 500 mm, width: 60 mm}]", "lining on ribs: yes"));
            assertThat(pieces).extracting(CutPiece::box)
                    .containsExactly(new Box(0, 0, 470, 800), new Box(530, 0, 470, 800));
        }

        @Test
        @DisplayName("ends at a straight edge where only a part of the panel can be reached")
        void partReach() {
            List<CutPiece> pieces = pieces("glass-felt-6", 0.6, Bench.panel("bulkhead", 900, 500, "ribs: none"));
            assertThat(pieces).extracting(CutPiece::box).containsExactly(new Box(0, 0, 540, 500));
        }
    }

    @Nested
    @DisplayName("a fixing, a hole or a hatch")
    class CutOuts {

        @Test
        @DisplayName("with a place is cut out of what lies over it: a bolt of 40 mm with a ring of 5 mm round it")
        void bolt() {
            CutPiece piece = pieces("vinyl-barrier-2", 1, Bench.panel("floor", 800, 600, "ribs: none",
                    "fixings: [{kind: seat bolt, at: [200 mm, 300 mm], size: 40 mm}]")).get(0);
            assertThat(piece.clearings()).singleElement().satisfies(c -> {
                assertThat(c.length()).isEqualTo(50);
                assertThat(c.along()).isEqualTo(200);
                assertThat(c.across()).isEqualTo(300);
            });
            assertThat(piece.shape().getNumInteriorRing()).isEqualTo(1);
            assertThat(piece.area()).isCloseTo(0.48 - Math.PI * 0.025 * 0.025, within(1e-5));
        }

        @Test
        @DisplayName("a drain is cut out too, and a plain cable hole is not: it is closed first")
        void drain() {
            CutPiece piece = pieces("vinyl-barrier-2", 1, Bench.panel("floor", 800, 600, "ribs: none",
                    "openings:", "  - {kind: drain, size: 20 mm, at: [100 mm, 100 mm]}",
                    "  - {kind: cable hole, size: 20 mm, at: [400 mm, 300 mm], must stay open: no}")).get(0);
            assertThat(piece.clearings()).extracting(c -> c.place().part()).containsExactly("drain 1");
        }

        @Test
        @DisplayName("a hatch in the corner leaves an L, and what comes out is its loose lid")
        void hatchInCorner() {
            CutPiece piece = pieces("vinyl-barrier-2", 1, Bench.panel("floor", 800, 600, "ribs: none",
                    "covers: [{kind: battery hatch, size: [300 mm, 200 mm], at: [650 mm, 500 mm]}]")).get(0);
            assertThat(piece.box()).isEqualTo(new Box(0, 0, 800, 600));
            assertThat(piece.shape().getExteriorRing().getNumPoints() - 1).isEqualTo(6);
            assertThat(piece.area()).isCloseTo(0.48 - 0.06, within(1e-9));
            assertThat(piece.clearings()).singleElement().matches(Clearing::isLid);
        }

        @Test
        @DisplayName("the service plug of an electric car gets no lid: nothing may lie on it")
        void servicePlug() {
            CutPiece piece = pieces("vinyl-barrier-2", 1, Bench.panel("floor", 800, 600, "ribs: none",
                    "covers: [{kind: service plug cover, size: [300 mm, 200 mm], at: [400 mm, 300 mm]}]")).get(0);
            assertThat(piece.clearings()).singleElement().matches(c -> !c.isLid());
        }

        @Test
        @DisplayName("without a place is cut on the vehicle, and the list says so")
        void onSite() {
            Pieces pieces = Bench.pieces(Bench.with("vinyl-barrier-2", 1, Bench.panel("floor", 800, 600, "ribs: none",
                    "openings: [{kind: drain, size: 20 mm, count: 3}]", "covers: [pump hatch]")));
            assertThat(pieces.pieces()).allMatch(CutPiece::isPlain);
            assertThat(pieces.onSite()).extracting(o -> o.place().part(), OnSite::count, OnSite::way).containsExactly(
                    org.assertj.core.groups.Tuple.tuple("drain 1", 3, Clearing.Way.CLEAR),
                    org.assertj.core.groups.Tuple.tuple("pump hatch 1", 1, Clearing.Way.LID));
            assertThat(pieces.onSite().get(0).clear()).isCloseTo(0.03, within(1e-9));
        }

        @Test
        @DisplayName("takes no joint: it moves to the side")
        void jointMoves() {
            String panel = Bench.panel("floor", 2000, 1000, "ribs: none",
                    "openings: [{kind: drain, size: 20 mm, at: [1200 mm, 500 mm]}]");
            List<CutPiece> across = PieceMaker.of(Bench.with("rubber-barrier-2.5-hot", 1, Bench.panel("floor", 2000, 1800,
                    "ribs: none", "openings: [{kind: drain, size: 20 mm, at: [1200 mm, 1000 mm]}]")),
                    unthrum.Scenarios.KNOWLEDGE, Parting.ALONG).pieces();
            assertThat(across.get(0).box().acrossEnd()).isEqualTo(1000 - 15 - Joints.OFF);
            assertThat(pieces("rubber-barrier-2.5-hot", 1, panel)).hasSize(1);
        }
    }

    @Nested
    @DisplayName("a pair of panels, left and right")
    class Pair {

        private static String side(String hand, String zone) {
            return Bench.panel(zone + "-" + hand, 800, 600, "ribs: none",
                    "fixings: [{kind: threaded insert, at: [100 mm, 300 mm]}]").replace("zone: floor", "zone: " + zone);
        }

        private final Plan plan = Bench.with("vinyl-barrier-2", 1,
                side("left", "side"),
                side("right", "side"),
                Bench.panel("sill-right", 800, 200, "ribs: none"));

        @Test
        @DisplayName("has the right one cut as the mirror image, and a panel without its like as it is")
        void mirrored() {
            assertThat(Bench.pieces(plan).pieces()).extracting(CutPiece::mirrored).containsExactly(false, true, false);
        }

        @Test
        @DisplayName("that lies underfoot is seen from above alone, so both are cut as they were measured")
        void floors() {
            assertThat(Bench.pieces(Bench.with("vinyl-barrier-2", 1, side("left", "floor"), side("right", "floor"))).pieces())
                    .noneMatch(CutPiece::mirrored).hasSize(2);
        }

        @Test
        @DisplayName("shows the hole at the other end of the mirrored piece on its sheet")
        void onTheSheet() {
            MaterialCut cut = Bench.cut(plan, Wishes.usual()).cuts().get(0);
            List<Double> fromOwnEnd = cut.layout().sheets().stream().flatMap(s -> s.placements().stream())
                    .map(p -> new Lying(cut.byName().get(p.piece()), p)).filter(l -> !l.cutOuts().isEmpty())
                    .sorted(java.util.Comparator.comparing(l -> l.piece().number()))
                    .map(l -> l.placement().turned() ? l.cutOuts().get(0).middle().right() - l.placement().x() / 10.0
                            : l.cutOuts().get(0).middle().up() - l.placement().y() / 10.0).toList();
            assertThat(fromOwnEnd.get(0)).isCloseTo(100, within(1e-6));
            assertThat(fromOwnEnd.get(1)).isCloseTo(700, within(1e-6));
        }
    }
}
