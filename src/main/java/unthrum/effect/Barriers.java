package unthrum.effect;

import java.util.List;
import java.util.Optional;
import unthrum.derive.OpenArea;
import unthrum.facts.Opening;
import unthrum.facts.Panel;
import unthrum.knowledge.Knowledge;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.physics.CompositeLoss;
import unthrum.physics.Estimate;
import unthrum.physics.Partition;
import unthrum.physics.ThirdOctave;

/**
 * A panel as a wall against sound: what its skin passes under each strip of layers, and bare strips and open holes
 * beside them. A closed hole is taken to block as well as the skin.
 */
final class Barriers {

    /** Bands in which a plan shows transmission loss: drumming, the middle, hiss. */
    static final List<ThirdOctave> BANDS = List.of(ThirdOctave.HZ_125, ThirdOctave.HZ_500, ThirdOctave.HZ_2000);

    private final Panel panel;
    private final WallSound sound;
    private final List<Stack> stacks;
    private final double openBefore;
    private final double openAfter;

    Barriers(Knowledge knowledge, Treated treated) {
        this.panel = treated.facts().the(Panel.class);
        this.sound = new WallSound(knowledge, treated.facts());
        this.stacks = Stack.of(panel, treated.layup());
        this.openBefore = OpenArea.share(treated.facts().all(Opening.class), panel, knowledge);
        this.openAfter = OpenArea.share(treated.facts().all(Opening.class)
                .filter(o -> o.staysOpen() || !treated.closed().contains(o.place())), panel, knowledge);
    }

    List<Blocking> blocking(List<BayEffect> bays) {
        Estimate<Double> resonance = highestResonance(bays);
        return BANDS.stream().map(band -> new Blocking(band, losses(band, resonance))).toList();
    }

    /** Whether such walls were measured and compared, in every strip. */
    boolean measured() {
        return stacks.stream().allMatch(s -> sound.measured(s.layers()));
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
        return Estimate.within(losses(band));
    }

    private Blocking.Losses losses(ThirdOctave band) {
        int at = ThirdOctave.HEARD.indexOf(band);
        double barrier = passed(at, true);
        double rest = passed(at, false);
        double wall = CompositeLoss.loss(barrier + rest);
        double bare = CompositeLoss.loss(sound.transmission(List.of())[at]);
        return new Blocking.Losses(CompositeLoss.withOpening(bare, openBefore),
                CompositeLoss.withOpening(wall, openBefore), CompositeLoss.withOpening(wall, openAfter),
                stacks.stream().mapToDouble(s -> sound.uncertainty(s.layers())[at]).max().orElseThrow(),
                floated(at), paths(openAfter, rest, barrier));
    }

    /** Σsτ over the strips with a barrier, or over those without. */
    private double passed(int band, boolean barrier) {
        return stacks.stream().filter(s -> s.has(Layer.BARRIER) == barrier)
                .mapToDouble(s -> s.share() * sound.transmission(s.layers())[band]).sum();
    }

    private Optional<Blocking.Floated> floated(int band) {
        return stacks.stream().filter(s -> sound.resonance(s.layers()).isPresent()).findFirst().map(Stack::layers)
                .map(layers -> new Blocking.Floated(sound.resonance(layers).getAsDouble(), direct(band),
                        sound.measured(layers)));
    }

    /** With all barriers straight on the skin. */
    private double direct(int band) {
        double passed = stacks.stream().mapToDouble(s -> s.share()
                * sound.transmission(withoutDecoupler(s.layers()))[band]).sum();
        return CompositeLoss.withOpening(CompositeLoss.loss(passed), openAfter);
    }

    private static List<Material> withoutDecoupler(List<Material> layers) {
        return layers.stream().filter(m -> m.layer() != Layer.DECOUPLER).toList();
    }

    private static Blocking.Paths paths(double open, double rest, double barrier) {
        double all = open + (1 - open) * (rest + barrier);
        return new Blocking.Paths(open / all, (1 - open) * rest / all, (1 - open) * barrier / all);
    }
}
