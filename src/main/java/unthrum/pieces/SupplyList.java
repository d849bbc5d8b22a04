package unthrum.pieces;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import unthrum.facts.Duty;
import unthrum.facts.Duty.Work;
import unthrum.facts.Place;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.material.Material.Bonding;
import unthrum.material.Material.Form;
import unthrum.pieces.Supplies.Closer;
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;
import unthrum.reasoning.Closing;
import unthrum.effect.Laid;

/** Counts what the work takes besides sheets and rolls, by the duties that the rules set. */
final class SupplyList {

    /** Two faces: the metal or the layer below, and the piece. */
    private static final int FACES = 2;
    /** Tape for joints is at least that wide, m: it must hold on both sides. Common practice, no source. */
    private static final double TAPE_WIDTH = 0.04;

    private final Plan plan;
    private final Knowledge knowledge;
    private final Catalogue catalogue;
    private final List<CutPiece> pieces;

    SupplyList(Plan plan, Knowledge knowledge, Catalogue catalogue, List<CutPiece> pieces) {
        this.plan = plan;
        this.knowledge = knowledge;
        this.catalogue = catalogue;
        this.pieces = pieces;
    }

    Supplies supplies() {
        double hot = glued(panel -> has(panel, Work.USE_HOT_ADHESIVE));
        double tape = plan.panels().stream().mapToDouble(this::tape).sum();
        return new Supplies(glued(panel -> true) - hot, hot,
                cleaned(Work.WASH) * knowledge.number("cutting/cleaner"),
                cleaned(Work.SOLVENT_WIPE) * knowledge.number("cutting/solvent"), tape, taping(tape), closers());
    }

    private double glued(java.util.function.Predicate<PlannedPanel> where) {
        Set<String> panels = plan.panels().stream().filter(where).map(PlannedPanel::name).collect(Collectors.toSet());
        return pieces.stream().filter(p -> p.material().bonding() == Bonding.CONTACT_ADHESIVE)
                .filter(p -> panels.contains(p.place().panel())).mapToDouble(CutPiece::area).sum()
                * FACES * knowledge.number("cutting/contact-adhesive");
    }

    /** The metal that the innermost layers cover, m². */
    private double cleaned(Work work) {
        return plan.panels().stream().filter(p -> has(p, work)).mapToDouble(p -> p.layup().layers().stream()
                .mapToDouble(Laid::area).max().orElse(0)).sum();
    }

    private double tape(PlannedPanel panel) {
        List<CutPiece> own = pieces.stream().filter(p -> p.place().panel().equals(panel.name()))
                .filter(p -> p.material().layer() != Layer.DAMPING).toList();
        double joints = has(panel, Work.TAPE_JOINTS) ? own.stream().map(CutPiece::material).distinct()
                .mapToDouble(m -> joints(own.stream().filter(p -> p.material().equals(m)).toList())).sum() : 0;
        double edges = has(panel, Work.SEAL_EDGES) ? own.stream().filter(p -> p.material().layer() == Layer.INSULATION)
                .mapToDouble(p -> 2e-3 * (p.box().length() + p.box().width())).sum() : 0;
        return joints + edges;
    }

    /** The length of all joints among the pieces of one face, m. */
    static double joints(List<CutPiece> face) {
        double length = 0;
        for (int i = 0; i < face.size(); i++) {
            for (CutPiece other : face.subList(0, i)) {
                length += face.get(i).box().jointWith(other.box()) / 1000.0;
            }
        }
        return length;
    }

    private Optional<Supplies.Tape> taping(double length) {
        return catalogue.of(Layer.SEAL).stream().filter(m -> m.form() == Form.ROLL)
                .filter(m -> m.size().get(0).si() >= TAPE_WIDTH).findFirst().filter(m -> length > 0)
                .map(m -> new Supplies.Tape(m, (int) Math.ceil(length / (m.size().get(1).si() * m.inPack()))));
    }

    private List<Closer> closers() {
        Map<String, Closer> closers = new TreeMap<>();
        for (PlannedPanel panel : plan.panels()) {
            Set<Place> closed = panel.closed();
            for (Closing closing : panel.advice().closings()) {
                if (closed.contains(closing.opening().place())) {
                    Material piece = closing.piece().orElseThrow();
                    double size = closing.opening().size();
                    closers.merge(piece.material() + String.format(" %08.1f", size * 1000),
                            new Closer(piece, size, closing.count()),
                            (a, b) -> new Closer(piece, size, a.count() + b.count()));
                }
            }
        }
        return new ArrayList<>(closers.values());
    }

    private static boolean has(PlannedPanel panel, Work work) {
        return panel.asPlanned().duties().stream().anyMatch(j -> ((Duty) j.conclusion()).work() == work);
    }
}
