package unthrum.derive;

import java.util.ArrayList;
import java.util.List;
import unthrum.facts.Decoupled;
import unthrum.facts.Fact;
import unthrum.facts.Leak;
import unthrum.facts.Opening;
import unthrum.facts.Panel;
import unthrum.facts.Room;
import unthrum.knowledge.Knowledge;
import unthrum.physics.Air;
import unthrum.physics.CompositeLoss;
import unthrum.physics.MassLaw;

/** What a usual barrier would do on a panel: what its open holes cost, and what floating it in the room would do. */
final class SoundDeriver {

    /** The third octave in which walls are compared, Hz: the middle of the range below. Common practice, no source. */
    private static final double MIDDLE = 500;

    private final Knowledge knowledge;

    SoundDeriver(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    List<Fact> facts(Panel panel, Room room, List<Fact> known) {
        List<Fact> facts = new ArrayList<>();
        double openShare = OpenArea.share(known.stream().filter(Opening.class::isInstance).map(Opening.class::cast)
                .filter(o -> !o.staysOpen()), panel, knowledge);
        double barrier = knowledge.number("usual/barrier-weight");
        if (openShare > 0) {
            double wall = MassLaw.field(panel.skinWeight() + barrier, MIDDLE, Air.AT_20_CELSIUS);
            facts.add(new Leak(panel.name(), openShare, CompositeLoss.ceiling(openShare),
                    CompositeLoss.leakCost(wall, openShare)));
        }
        double depth = room.clearance() - knowledge.number("usual/barrier-thickness");
        if (depth >= knowledge.number("usual/thinnest-foam")) {
            facts.add(decoupled(panel, Math.min(depth, knowledge.number("usual/deepest-foam"))));
        }
        return facts;
    }

    private Decoupled decoupled(Panel panel, double depth) {
        return new Decoupled(panel.name(), depth, FloatedBarrier.resonance(panel.skinWeight(), depth, knowledge));
    }
}
