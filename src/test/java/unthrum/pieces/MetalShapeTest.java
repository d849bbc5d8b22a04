package unthrum.pieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import unthrum.Scenarios;
import unthrum.pieces.Line.Kind;

@DisplayName("Pieces cut for looms, folds, bulges and large hatches")
class MetalShapeTest {

    private static List<CutPiece> pieces(String material, String panel) {
        return Bench.pieces(Bench.with(material, 1, panel)).pieces();
    }

    private static List<CutPiece> along(String material, String panel) {
        return PieceMaker.of(Bench.with(material, 1, panel), Scenarios.KNOWLEDGE, Parting.ALONG).pieces();
    }

    private static List<Line> lines(CutPiece piece, Kind kind) {
        return piece.lines().stream().filter(l -> l.kind() == kind).toList();
    }

    @Nested
    @DisplayName("a loom through a grommet")
    class Keyhole {

        private static final String GROMMET = "{kind: grommet, size: 30 mm, state: closed, at: [200 mm, 100 mm]}";

        @Test
        @DisplayName("gets a hole no larger than the grommet and a slit to it from the nearest edge")
        void slit() {
            CutPiece piece = pieces("vinyl-barrier-2", Bench.panel("bulkhead", 800, 600, "ribs: none",
                    "openings: [" + GROMMET + "]")).get(0);
            assertThat(piece.clearings()).singleElement().matches(Clearing::isKeyhole).matches(c -> c.length() == 30);
            assertThat(lines(piece, Kind.SLIT)).singleElement().satisfies(l -> {
                assertThat(l.length()).isCloseTo(85, within(0.2));
                assertThat(l.fromAlong()).isEqualTo(200);
                assertThat(l.fromAcross()).isZero();
            });
            assertThat(piece.isPlain()).isFalse();
        }

        @Test
        @DisplayName("is slit from another side where a drain lies on the nearest way")
        void pastTheDrain() {
            CutPiece piece = pieces("vinyl-barrier-2", Bench.panel("bulkhead", 800, 600, "ribs: none",
                    "openings: [" + GROMMET + ", {kind: drain, size: 20 mm, at: [200 mm, 40 mm]}]")).get(0);
            assertThat(lines(piece, Kind.SLIT)).singleElement().matches(l -> l.fromAlong() == 0 && l.runsAlong());
        }

        @Test
        @DisplayName("whose hole is open is closed first and needs no keyhole")
        void open() {
            CutPiece piece = pieces("vinyl-barrier-2", Bench.panel("bulkhead", 800, 600, "ribs: none",
                    "openings: [" + GROMMET.replace("closed", "open") + "]")).get(0);
            assertThat(piece.isPlain()).isTrue();
        }

        @Test
        @DisplayName("without a place is slit on the vehicle")
        void onSite() {
            Pieces pieces = Bench.pieces(Bench.with("vinyl-barrier-2", 1, Bench.panel("bulkhead", 800, 600,
                    "ribs: none", "openings: [{kind: grommet, size: 30 mm, state: closed}]")));
            assertThat(pieces.onSite()).singleElement().matches(o -> o.way() == Clearing.Way.KEYHOLE)
                    .satisfies(o -> assertThat(o.clear()).isCloseTo(0.03, within(1e-9)));
        }
    }

    @Nested
    @DisplayName("a fold in the metal")
    class Folds {

        @Test
        @DisplayName("is marked on the piece that runs over it, which stays a plain rectangle to cut")
        void bends() {
            CutPiece piece = pieces("vinyl-barrier-2", Bench.panel("bulkhead", 800, 600,
                    "ribs: [{kind: fold, runs: across, at: 300 mm}]")).get(0);
            assertThat(piece.lines()).containsExactly(new Line(Kind.FOLD, 300, 0, 300, 600));
            assertThat(piece.isPlain()).isTrue();
        }

        @Test
        @DisplayName("takes no joint: it lies beside it")
        void noJoint() {
            List<CutPiece> pieces = along("rubber-barrier-2.5-hot", Bench.panel("floor", 2000, 1800,
                    "ribs: [{kind: fold, runs: along, at: 995 mm}]"));
            assertThat(pieces.get(0).box().acrossEnd()).isEqualTo(995 - Joints.OFF);
        }

        @Test
        @DisplayName("that crosses another takes a relief cut from the nearest edge to their corner")
        void crossing() {
            CutPiece piece = pieces("vinyl-barrier-2", Bench.panel("bulkhead", 800, 600,
                    "ribs: [{kind: fold, runs: across, at: 300 mm}, {kind: fold, runs: along, at: 450 mm}]")).get(0);
            assertThat(lines(piece, Kind.FOLD)).hasSize(2);
            assertThat(lines(piece, Kind.RELIEF)).containsExactly(new Line(Kind.RELIEF, 300, 600, 300, 450));
        }

        @Test
        @DisplayName("ends a damping patch, which never runs over it")
        void damping() {
            assertThat(pieces("butyl-2", Bench.panel("floor", 800, 300,
                    "ribs: [{kind: fold, runs: across, at: 400 mm}]"))).hasSizeGreaterThan(1)
                    .allSatisfy(p -> assertThat(p.lines()).isEmpty());
        }
    }

    @Nested
    @DisplayName("a panel that bulges both ways")
    class Bulges {

        private static final Relief.Bearing BEARING = new Relief.Bearing(0.01, 15);

        private static String arch(String shape) {
            return Bench.panel("arch", 760, 420, "ribs: none").replace("shape: flat", "shape: " + shape);
        }

        @ParameterizedTest(name = "{0} × {1} mm on a ball of {2} mm")
        @CsvSource({"600, 400, 1000", "900, 300, 700", "1200, 800, 2000"})
        @DisplayName("has too much sheet at the rim by what a circle of latitude is shorter than the equator")
        void ball(int length, int width, double radius) {
            double half = width / 2.0;
            double surplus = length * (1 - Math.cos(half / radius));
            Relief relief = Relief.of(new Box(0, 0, length, width), 1 / radius / radius, BEARING).orElseThrow();
            assertThat((double) relief.aSide() * relief.lap()).isBetween(surplus, surplus * 1.02 + relief.aSide());
            assertThat(1 - Math.cos((half - relief.depth()) / radius)).isCloseTo(0.01, within(0.0003));
            assertThat(relief.lap()).isLessThanOrEqualTo(15);
        }

        @Test
        @DisplayName("bulges as the circle over its chord and rise: 600 mm with 46 mm over it is a circle of 1 m")
        void curvature() {
            double rise = 1000 - Math.sqrt(1000 * 1000 - 300 * 300);
            assertThat(Relief.curvature(600, 600, rise)).isCloseTo(1e-6, within(1e-12));
        }

        @Test
        @DisplayName("gets relief cuts in both long sides of a piece on a wheel arch, evenly spaced and equally deep")
        void arch() {
            CutPiece piece = pieces("vinyl-barrier-2", arch("{curve: crowned, rise: 60 mm}")).get(0);
            Relief relief = piece.relief().orElseThrow();
            assertThat(lines(piece, Kind.RELIEF)).hasSize(2 * relief.aSide())
                    .allSatisfy(l -> assertThat(l.length()).isCloseTo(relief.depth(), within(1e-6)))
                    .allSatisfy(l -> assertThat(l.fromAcross()).isIn(0.0, 420.0));
            assertThat(lines(piece, Kind.RELIEF)).extracting(l -> Math.round(l.fromAlong()))
                    .contains(Math.round(760 / 2.0 / relief.aSide()));
        }

        @ParameterizedTest
        @CsvSource(delimiter = ';', value = {"flat", "{curve: rolled, rise: 60 mm}", "{curve: crowned, rise: 8 mm}",
            "unknown"})
        @DisplayName("gets none where it is flat, rolled or hardly crowned, or where nobody has looked")
        void none(String shape) {
            assertThat(pieces("vinyl-barrier-2", arch(shape))).singleElement().matches(p -> p.relief().isEmpty())
                    .matches(p -> p.lines().isEmpty());
        }
    }

    @Nested
    @DisplayName("a hatch larger than a sheet")
    class LargeHatch {

        @Test
        @DisplayName("takes the joint through its middle, and its lid is cut in as many parts")
        void through() {
            List<CutPiece> pieces = along("rubber-barrier-2.5-hot", Bench.panel("floor", 2000, 1800, "ribs: none",
                    "covers: [{kind: battery hatch, size: [1400 mm, 1300 mm], at: [1000 mm, 900 mm]}]"));
            assertThat(pieces).extracting(CutPiece::box)
                    .containsExactly(new Box(0, 0, 2000, 900), new Box(0, 900, 2000, 900));
            assertThat(pieces).allSatisfy(p -> assertThat(p.shape().getExteriorRing().getNumPoints() - 1).isEqualTo(8));
            assertThat(pieces.stream().mapToDouble(CutPiece::lids).sum()).isCloseTo(1.4 * 1.3, within(1e-9));
        }

        @Test
        @DisplayName("or the joint keeps a strip's width off its edge where its middle is out of reach")
        void beside() {
            List<CutPiece> pieces = along("rubber-barrier-2.5-hot", Bench.panel("floor", 2000, 1800, "ribs: none",
                    "covers: [{kind: battery hatch, size: [1400 mm, 700 mm], at: [1000 mm, 1300 mm]}]"));
            assertThat(pieces.get(0).box().acrossEnd()).isEqualTo(950 - Joints.LEAST);
        }

        @Test
        @DisplayName("that takes the whole width ends the piece on both sides without a joint; its lid is a piece by itself")
        void ends() {
            List<CutPiece> pieces = pieces("vinyl-barrier-2", Bench.panel("floor", 2900, 1100, "ribs: none",
                    "covers: [{kind: battery hatch, size: [400 mm, 1100 mm], at: [1400 mm, 550 mm]}]"));
            assertThat(pieces).extracting(CutPiece::box).containsExactly(new Box(0, 0, 1200, 1100),
                    new Box(1600, 0, 1300, 1100), new Box(1200, 0, 400, 1100));
            assertThat(pieces).allMatch(CutPiece::isPlain);
        }
    }
}
