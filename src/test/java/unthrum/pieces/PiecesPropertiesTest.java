package unthrum.pieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import unthrum.Scenarios;
import unthrum.cutting.CutRule;
import unthrum.cutting.LayoutCheck;
import unthrum.cutting.Placement;
import unthrum.plan.Plan;

@Label("On any panel")
class PiecesPropertiesTest {

    private static final int TRIES = 60;

    /** A panel with up to two ribs and up to three drains and bolts at places, mm. */
    record Drawn(int length, int width, List<Integer> ribs, List<List<Integer>> drains, String material,
                 double coverage) {

        Plan plan() {
            List<String> keys = new ArrayList<>();
            keys.add(ribs.isEmpty() ? "ribs: none" : "ribs: [" + String.join(", ", ribs.stream()
                    .map(at -> "{kind: bead, runs: across, at: " + at * length / 100 + " mm, width: 30 mm}").toList())
                    + "]");
            keys.add(drains.isEmpty() ? "openings: none" : "openings: [" + String.join(", ", drains.stream()
                    .map(d -> "{kind: drain, size: 24 mm, at: [" + d.get(0) * length / 100 + " mm, "
                            + d.get(1) * width / 100 + " mm]}").toList()) + "]");
            keys.add("fixings: none");
            return Bench.with(material, coverage, Bench.panel("panel", length, width, keys.toArray(String[]::new)));
        }
    }

    @Provide
    Arbitrary<Drawn> panels() {
        Arbitrary<Integer> percent = Arbitraries.integers().between(0, 100);
        return Combinators.combine(Arbitraries.integers().between(150, 3500), Arbitraries.integers().between(150, 2200),
                Arbitraries.of(List.<Integer>of(), List.of(50), List.of(30, 70)),
                percent.list().ofSize(2).list().ofMaxSize(2),
                Arbitraries.of("butyl-2", "butyl-door", "vinyl-barrier-2", "nitrile-foam-10", "open-pu-10",
                        "needle-carpet-5"),
                Arbitraries.of(1.0, 0.5, 0.44, 0.33)).as(Drawn::new);
    }

    private static List<Clearing> clearings(Plan plan) {
        var panel = plan.panels().get(0);
        return new Fittings(panel.advice().panel(), plan.survey().panels().get(0),
                panel.layup().layers().get(0).layer(), Scenarios.KNOWLEDGE).clearings();
    }

    @Property(tries = TRIES)
    @Label("pieces and what is cut out of them make up the area that the plan covers")
    void area(@ForAll("panels") Drawn drawn) {
        Plan plan = drawn.plan();
        List<CutPiece> pieces = Bench.pieces(plan).pieces();
        double covered = plan.panels().get(0).layup().layers().get(0).area();
        // Whole millimetres: half of one on each side of each face.
        int faces = plan.panels().get(0).layup().layers().get(0).patches().size() * 3;
        double tolerance = faces * (drawn.length + drawn.width) * 1e-6 + 1e-4;
        assertThat(sum(pieces) + cutOut(plan, pieces)).isCloseTo(covered, within(tolerance));
    }

    private static double sum(List<CutPiece> pieces) {
        return pieces.stream().mapToDouble(CutPiece::area).sum();
    }

    /** What the drains take out of the faces: of each the part inside the smallest boxes around the pieces. */
    private static double cutOut(Plan plan, List<CutPiece> pieces) {
        double out = 0;
        for (CutPiece piece : pieces) {
            var face = piece.box().shape();
            for (Clearing clearing : clearings(plan)) {
                var part = face.intersection(clearing.shape());
                face = face.difference(clearing.shape());
                out += part.getArea() / 1e6;
            }
        }
        return out;
    }

    @Property(tries = TRIES)
    @Label("no piece lies over a drain, over another piece, or beyond the panel")
    void clear(@ForAll("panels") Drawn drawn) {
        Plan plan = drawn.plan();
        List<CutPiece> pieces = Bench.pieces(plan).pieces();
        var panel = new Box(0, 0, drawn.length, drawn.width).shape();
        for (int i = 0; i < pieces.size(); i++) {
            var shape = pieces.get(i).shape();
            clearings(plan).forEach(c -> assertThat(shape.intersection(c.shape()).getArea()).isLessThan(1e-3));
            assertThat(panel.contains(shape)).isTrue();
            pieces.subList(0, i).forEach(o -> assertThat(shape.intersection(o.shape()).getArea()).isLessThan(1e-3));
        }
    }

    @Property(tries = TRIES)
    @Label("each piece fits its sheet, and no joint runs through a drain")
    void joints(@ForAll("panels") Drawn drawn, @ForAll Parting parting) {
        Plan plan = drawn.plan();
        List<CutPiece> pieces = PieceMaker.of(plan, Scenarios.KNOWLEDGE, parting).pieces();
        SheetSize sheet = SheetSize.of(Scenarios.CATALOGUE.find(drawn.material).orElseThrow());
        for (int i = 0; i < pieces.size(); i++) {
            Box box = pieces.get(i).box();
            assertThat(sheet.ways()).anyMatch(w -> box.length() <= w.length() && box.width() <= w.width());
            for (CutPiece other : pieces.subList(0, i)) {
                if (box.jointWith(other.box()) > 0) {
                    clearings(plan).forEach(c -> assertThat(box.shape().intersects(c.shape())
                            && other.box().shape().intersects(c.shape())).isFalse());
                }
            }
        }
    }

    @Property(tries = 25)
    @Label("the layout passes the independent check, and material with a direction is never turned")
    void layouts(@ForAll("panels") Drawn drawn, @ForAll CutRule cuts) {
        CutPlan cut = Bench.cut(drawn.plan(), Wishes.usual().cuts(cuts));
        for (MaterialCut material : cut.cuts()) {
            assertThat(LayoutCheck.faults(material.layout())).isEmpty();
            assertThat(material.unplaced()).isEmpty();
            assertThat(material.layout().sheets().stream().flatMap(s -> s.placements().stream())
                    .filter(Placement::turned).filter(p -> material.material().runsOneWay().orElse(false))).isEmpty();
        }
    }
}
