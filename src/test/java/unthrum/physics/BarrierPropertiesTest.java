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
        assertThat(MassLaw.normal(mass, frequency, Air.AT_20_CELSIUS)).isGreaterThanOrEqualTo(loss);
    }

    @Property
    @Label("more damping never deepens the coincidence dip, and coincidence never helps up to the critical frequency")
    void damping(@ForAll @DoubleRange(min = 0.001, max = 0.3) @Scale(4) double lossFactor,
            @ForAll @DoubleRange(min = 1, max = 3) double times, @ForAll @DoubleRange(min = 0.01, max = 3) double ratio) {
        Leaf light = Leaf.stiff(35.3, 86538, lossFactor);
        Leaf damped = Leaf.stiff(35.3, 86538, lossFactor * times);
        double frequency = ratio * light.criticalFrequency().orElseThrow();

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
    @Label("a floating barrier is never better than the same mass below its resonance, and better from three times it up")
    void floating(@ForAll @DoubleRange(min = 2, max = 15) double skin, @ForAll @DoubleRange(min = 1, max = 12) double barrier,
            @ForAll @DoubleRange(min = 0.003, max = 0.06) @Scale(4) double depth, @ForAll @DoubleRange(min = 0.02, max = 0.4) double loss,
            @ForAll @DoubleRange(min = 0.1, max = 8) double ratio) {
        DoubleLeaf wall = new DoubleLeaf(Leaf.limp(skin), Leaf.limp(barrier), Decoupler.openCell(depth, 50e3, loss));
        double frequency = ratio * wall.resonance();
        double together = Leaf.limp(skin + barrier).transmissionLoss(frequency);

        if (ratio <= 1) {
            assertThat(wall.transmissionLoss(frequency)).isLessThanOrEqualTo(together + ROUNDING);
        }
        if (ratio >= 3 && together > 0) {
            assertThat(wall.transmissionLoss(frequency)).isGreaterThan(together);
        }
    }

    @Property
    @Label("a floating barrier has no steps: one per mille in frequency is less than a quarter of a decibel")
    void smooth(@ForAll @DoubleRange(min = 0.003, max = 0.06) @Scale(4) double depth,
            @ForAll @DoubleRange(min = 20, max = 15000) double frequency) {
        DoubleLeaf wall = new DoubleLeaf(Leaf.stiff(6.28, 9.85, 0.01), Leaf.limp(4), Decoupler.openCell(depth, 0, 0.1));

        assertThat(wall.transmissionLoss(frequency * 1.001) - wall.transmissionLoss(frequency)).isBetween(-0.25, 0.25);
    }

    @Property
    @Label("a sum of levels is at least its largest, and a second source adds at most 3.01 dB to the larger")
    void levels(@ForAll @DoubleRange(min = -50, max = 150) double one, @ForAll @DoubleRange(min = -50, max = 150) double other) {
        assertThat(Levels.sum(one, other) - Math.max(one, other)).isBetween(0.0, 3.0103 + ROUNDING);
    }
}
