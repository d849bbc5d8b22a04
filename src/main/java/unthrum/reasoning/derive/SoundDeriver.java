package unthrum.reasoning.derive;

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
import unthrum.physics.Decoupler;
import unthrum.physics.DoubleLeaf;
import unthrum.physics.Leaf;
import unthrum.physics.MassLaw;
import unthrum.physics.ThirdOctave;
import unthrum.survey.OpeningState;

/** What a usual barrier would do on a panel: what its open holes cost, and what floating it in the room would gain. */
final class SoundDeriver {

    /** The third octave in which walls are compared, Hz: the middle of the range below. Common practice, no source. */
    private static final double MIDDLE = 500;

    /** Between these third octaves, Hz, floating a barrier is worth its foam. Common practice, no source. */
    private static final double LOWEST_BAND = 250;
    private static final double HIGHEST_BAND = 4000;

    private final Knowledge knowledge;

    SoundDeriver(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    List<Fact> facts(Panel panel, Room room, List<Fact> known) {
        List<Fact> facts = new ArrayList<>();
        double openArea = known.stream().filter(Opening.class::isInstance).map(Opening.class::cast)
                .filter(o -> o.state() == OpeningState.OPEN && !o.staysOpen()).mapToDouble(o -> OpenArea.of(o, knowledge)).sum();
        double openShare = Math.min(openArea / panel.area(), 1);
        double barrier = knowledge.number("usual/barrier-weight");
        if (openShare > 0) {
            double wall = MassLaw.field(panel.skinWeight() + barrier, MIDDLE, Air.AT_20_CELSIUS);
            facts.add(new Leak(panel.name(), openShare, CompositeLoss.ceiling(openShare),
                    CompositeLoss.leakCost(wall, openShare)));
        }
        double depth = room.clearance() - knowledge.number("usual/barrier-thickness");
        if (depth >= knowledge.number("usual/thinnest-foam")) {
            facts.add(decoupled(panel, Math.min(depth, knowledge.number("usual/deepest-foam")), barrier));
        }
        return facts;
    }

    private Decoupled decoupled(Panel panel, double depth, double barrier) {
        Decoupler foam = Decoupler.closedCell(depth, knowledge.number("usual/foam-modulus"),
                knowledge.number("usual/foam-loss-factor"));
        DoubleLeaf floated = new DoubleLeaf(Leaf.limp(panel.skinWeight()), Leaf.limp(barrier), foam);
        Leaf direct = Leaf.limp(panel.skinWeight() + barrier);
        double gain = 0;
        int bands = 0;
        for (ThirdOctave band : ThirdOctave.values()) {
            if (band.nominal() >= LOWEST_BAND && band.nominal() <= HIGHEST_BAND) {
                gain += floated.transmissionLoss(band.centre()) - direct.transmissionLoss(band.centre());
                bands++;
            }
        }
        return new Decoupled(panel.name(), depth, floated.resonance(), gain / bands);
    }
}
