package unthrum.physics;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

@Label("Barrier and leaks: what must hold for every panel")
class BarrierPropertiesTest {
    private static final double ROUNDING = 1e-9;

    @Property
    @Label("more mass never lowers the mass law, nor does a higher note")
    void massLaw(@ForAll @DoubleRange(min = 0.1, max = 60) double mass, @ForAll @DoubleRange(min = 0, max = 40) double more,
            @ForAll @DoubleRange(min = 20, max = 20000) double frequency, @ForAll @DoubleRange(min = 1, max = 5) double higher) {
        double loss = MassLaw.field(mass, frequency, Air.AT_20_CELSIUS);

        assertThat(MassLaw.field(mass + more, frequency, Air.AT_20_CELSIUS)).isGreaterThanOrEqualTo(loss);
        assertThat(MassLaw.field(mass, frequency * higher, Air.AT_20_CELSIUS)).isGreaterThanOrEqualTo(loss);
        assertThat(MassLaw.normal(mass, frequency, Air.AT_20_CELSIUS)).isGreaterThanOrEqualTo(loss - ROUNDING);
    }

    @Property
    @Label("more damping never deepens the coincidence dip, and coincidence never helps up to the critical frequency")
    void damping(@ForAll @DoubleRange(min = 0.001, max = 0.3) @Scale(4) double lossFactor,
            @ForAll @DoubleRange(min = 1, max = 3) double times, @ForAll @DoubleRange(min = 0.01, max = 3) double ratio) {
        Leaf light = Leaf.stiff(35.3, 86538, lossFactor);
        Leaf damped = Leaf.stiff(35.3, 86538, lossFactor * times);
        double frequency = ratio * light.criticalFrequency();

        assertThat(damped.transmissionLoss(frequency)).isGreaterThanOrEqualTo(light.transmissionLoss(frequency) - ROUNDING);
        assertThat(light.transmissionLoss(frequency))
                .isLessThanOrEqualTo(MassLaw.normal(35.3, frequency, light.air()) + ROUNDING);
    }

    @Property
    @Label("no hole is never beaten by a hole, nor a smaller hole by a larger one")
    void holes(@ForAll @DoubleRange(min = 0, max = 90) double panel, @ForAll @DoubleRange(min = 0, max = 1) double smaller,
            @ForAll @DoubleRange(min = 0, max = 1) double way) {
        double larger = smaller + way * (1 - smaller);

        assertThat(CompositeLoss.withOpening(panel, smaller)).isLessThanOrEqualTo(panel + ROUNDING);
        assertThat(CompositeLoss.withOpening(panel, larger))
                .isLessThanOrEqualTo(CompositeLoss.withOpening(panel, smaller) + ROUNDING)
                .isLessThanOrEqualTo(CompositeLoss.ceiling(larger) + ROUNDING);
    }

    @Property
    @Label("areas together lie between the best and the worst of them")
    void between(@ForAll @DoubleRange(min = 0, max = 90) double one, @ForAll @DoubleRange(min = 0, max = 90) double other,
            @ForAll @DoubleRange(min = 0, max = 1) double coverage) {
        assertThat(CompositeLoss.covered(one, other, coverage))
                .isBetween(Math.min(one, other) - ROUNDING, Math.max(one, other) + ROUNDING);
    }

    @Property
    @Label("a floating barrier is never better than the same mass below its resonance, and better from three times it up, "
            + "until waves stand across the foam")
    void floating(@ForAll @DoubleRange(min = 2, max = 15) double skin, @ForAll @DoubleRange(min = 1, max = 12) double barrier,
            @ForAll @DoubleRange(min = 0.003, max = 0.06) @Scale(4) double depth, @ForAll @DoubleRange(min = 0.02, max = 0.4) double loss,
            @ForAll @DoubleRange(min = 0.1, max = 8) double ratio) {
        DoubleLeaf wall = floated(skin, barrier, Decoupler.openCell(depth, 50e3, 30, loss), Bridges.NONE);
        double frequency = ratio * wall.resonance();
        double together = Leaf.limp(skin + barrier).transmissionLoss(frequency);

        if (ratio <= 1) {
            assertThat(wall.transmissionLoss(frequency)).isLessThanOrEqualTo(together + ROUNDING);
        }
        if (ratio >= 3 && frequency < 2 * wall.decoupler().limit()) {
            assertThat(wall.transmissionLoss(frequency)).isGreaterThan(together);
        }
    }

    @Property
    @Label("more ties never help, and softer foam never hurts above twice the resonance, until waves stand across it")
    void tied(@ForAll @DoubleRange(min = 0, max = 20) double points, @ForAll @DoubleRange(min = 0, max = 8) double lines,
            @ForAll @DoubleRange(min = 0, max = 10) double more, @ForAll @DoubleRange(min = 2, max = 4) double ratio) {
        Decoupler foam = Decoupler.closedCell(0.006, 230e3, 33, 0.15);
        DoubleLeaf tied = floated(6.3, 4, foam, new Bridges(lines, points));
        double frequency = ratio * tied.resonance();

        assertThat(floated(6.3, 4, foam, new Bridges(lines + more, points + more)).transmissionLoss(frequency))
                .isLessThanOrEqualTo(tied.transmissionLoss(frequency) + ROUNDING);
        assertThat(tied.transmissionLoss(frequency))
                .isLessThanOrEqualTo(floated(6.3, 4, foam, Bridges.NONE).transmissionLoss(frequency) + ROUNDING);
        assertThat(floated(6.3, 4, Decoupler.closedCell(0.006, 150e3, 33, 0.15), tied.bridges())
                .transmissionLoss(frequency)).isGreaterThanOrEqualTo(tied.transmissionLoss(frequency) - ROUNDING);
    }

    /** The barrier bends like filled vinyl of 2 mm. */
    private static DoubleLeaf floated(double skin, double barrier, Decoupler foam, Bridges bridges) {
        return new DoubleLeaf(Leaf.limp(skin), Leaf.stiff(barrier, 0.08, 0.2), foam, bridges);
    }

    @Property
    @Label("a floating barrier has no steps: one per mille in frequency is less than a quarter of a decibel")
    void smooth(@ForAll @DoubleRange(min = 0.003, max = 0.06) @Scale(4) double depth,
            @ForAll @DoubleRange(min = 20, max = 6000) double frequency) {
        DoubleLeaf wall = new DoubleLeaf(Leaf.stiff(6.28, 9.85, 0.01), Leaf.limp(4),
                Decoupler.openCell(depth, 100e3, 30, 0.15), Bridges.NONE);

        assertThat(wall.transmissionLoss(frequency * 1.001) - wall.transmissionLoss(frequency)).isBetween(-0.25, 0.25);
    }
}
