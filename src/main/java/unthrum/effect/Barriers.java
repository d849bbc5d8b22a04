package unthrum.effect;

import java.util.List;
import unthrum.facts.Opening;
import unthrum.facts.Panel;
import unthrum.knowledge.Knowledge;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.physics.Band;
import unthrum.physics.CompositeLoss;
import unthrum.physics.DoubleLeaf;
import unthrum.physics.Estimate;
import unthrum.physics.Leaf;
import unthrum.physics.Partition;
import unthrum.physics.ThirdOctave;
import unthrum.derive.FloatedBarrier;
import unthrum.derive.MetalSheet;
import unthrum.derive.OpenArea;
import unthrum.survey.OpeningState;

/**
 * A panel as a wall against sound: skin and layers by the mass law, a barrier on a spring as a second leaf, bare strips
 * and open holes beside them. A closed hole is taken to block as well as the skin.
 */
final class Barriers {

    /** Bands in which a plan shows transmission loss: drumming, the middle, hiss. */
    static final List<ThirdOctave> BANDS = List.of(ThirdOctave.HZ_125, ThirdOctave.HZ_500, ThirdOctave.HZ_2000);

    /** Root mean square of 33 measured octave values of bare steel about {@link unthrum.physics.MassLaw}. */
    private static final double SINGLE_LEAF = 3;
    /** As {@link DoubleLeaf} states, away from its resonance and near it. */
    private static final double DOUBLE_LEAF = 5;
    private static final double NEAR_RESONANCE = 10;
    private static final Band NEAR = new Band(Math.sqrt(0.5), Math.sqrt(2));

    private final Knowledge knowledge;
    private final Panel panel;
    private final List<Stack> stacks;
    private final double openBefore;
    private final double openAfter;

    Barriers(Knowledge knowledge, Treated treated) {
        this.knowledge = knowledge;
        this.panel = treated.facts().the(Panel.class);
        this.stacks = Stack.of(panel, treated.layup());
        List<Opening> open = treated.facts().all(Opening.class).filter(o -> o.state() == OpeningState.OPEN).toList();
        this.openBefore = share(open);
        this.openAfter = share(open.stream().filter(o -> o.staysOpen() || !treated.closed().contains(o.place()))
                .toList());
    }

    private double share(List<Opening> openings) {
        double area = openings.stream().mapToDouble(o -> OpenArea.of(o, knowledge)).sum();
        return Math.min(area / panel.area(), 1);
    }

    List<Blocking> blocking(List<BayEffect> bays) {
        Estimate<Double> resonance = highestResonance(bays);
        return BANDS.stream().map(band -> new Blocking(band, losses(band, resonance))).toList();
    }

    /** The first resonance of the stiffest bay at its hardest edges, before or after: above it all bays are masses. */
    private static Estimate<Double> highestResonance(List<BayEffect> bays) {
        double highest = 0;
        for (BayEffect bay : bays) {
            if (!bay.response().isWithin()) {
                return Estimate.outside(bay.response().reason());
            }
            highest = Math.max(highest, Math.max(bay.response().value().before().upper(),
                    bay.response().value().after().upper()));
        }
        return Estimate.within(highest);
    }

    private Estimate<Blocking.Losses> losses(ThirdOctave band, Estimate<Double> resonance) {
        if (!resonance.isWithin()) {
            return Estimate.outside(resonance.reason());
        }
        if (band.centre() < Partition.MASS_CONTROLLED_FROM * resonance.value()) {
            return Estimate.outside("below twice the first resonance of the stiffest bay its stiffness decides, not "
                    + "its mass");
        }
        double barrier = passed(band, true);
        double rest = passed(band, false);
        double wall = CompositeLoss.loss(barrier + rest);
        double skin = leaf(List.of()).transmissionLoss(band);
        return Estimate.within(new Blocking.Losses(CompositeLoss.withOpening(skin, openBefore),
                CompositeLoss.withOpening(wall, openBefore), CompositeLoss.withOpening(wall, openAfter),
                stacks.stream().mapToDouble(s -> uncertainty(partition(s), band)).max().orElseThrow(),
                paths(openAfter, rest, barrier)));
    }

    private static Blocking.Paths paths(double open, double rest, double barrier) {
        double all = open + (1 - open) * (rest + barrier);
        return new Blocking.Paths(open / all, (1 - open) * rest / all, (1 - open) * barrier / all);
    }

    /** Σsτ over the strips with a barrier, or over those without. */
    private double passed(ThirdOctave band, boolean barrier) {
        return stacks.stream().filter(s -> s.position(Layer.BARRIER) >= 0 == barrier)
                .mapToDouble(s -> s.share() * CompositeLoss.transmission(partition(s).transmissionLoss(band))).sum();
    }

    private Partition partition(Stack stack) {
        int spring = stack.position(Layer.DECOUPLER);
        int barrier = stack.position(Layer.BARRIER);
        if (spring < 0 || barrier < spring || stack.layers().get(spring).springModulus().isEmpty()) {
            return leaf(stack.layers());
        }
        List<Material> beyond = stack.layers().subList(spring + 1, stack.layers().size());
        return new DoubleLeaf(leaf(stack.layers().subList(0, spring + 1)), Leaf.limp(Stack.mass(beyond)),
                FloatedBarrier.spring(stack.layers().get(spring), knowledge));
    }

    private Leaf leaf(List<Material> layers) {
        return Leaf.stiff(panel.skinWeight() + Stack.mass(layers), MetalSheet.of(panel).flexuralRigidity(),
                knowledge.number("usual/bare-loss-factor"));
    }


    private static double uncertainty(Partition partition, ThirdOctave band) {
        if (!(partition instanceof DoubleLeaf floated)) {
            return SINGLE_LEAF;
        }
        return NEAR.contains(band.centre() / floated.resonance()) ? NEAR_RESONANCE : DOUBLE_LEAF;
    }
}
