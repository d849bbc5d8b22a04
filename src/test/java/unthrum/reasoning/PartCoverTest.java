package unthrum.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import unthrum.facts.Bay;
import unthrum.physics.Sheet;
import unthrum.survey.Tap;

@DisplayName("Part of a damping patch")
class PartCoverTest {

    private static List<Double> returns(double length, double width, double gain, double cover) {
        Bay bay = new Bay("panel", 1, length, width, Math.min(length, width), length * width, Tap.RINGS, 80, 120, 0.9,
                cover, gain, 1, Double.NaN, Double.NaN, 1, Set.of());
        return PartCover.returns(bay, Sheet.steel(0.0008).skin(), cover);
    }

    @Property(tries = 100)
    @Label("does ever more, each quarter less than the one before, and all four the whole")
    void diminishes(@ForAll @DoubleRange(min = 0.2, max = 1) double length,
                    @ForAll @DoubleRange(min = 0.2, max = 1) double width,
                    @ForAll @DoubleRange(min = 1, max = 20) double gain,
                    @ForAll @DoubleRange(min = 0.2, max = 0.5) double cover) {
        List<Double> returns = returns(length, width, gain, cover);
        assertThat(returns).hasSize(PartCover.PIECES).isSorted();
        assertThat(returns.get(3)).isCloseTo(1, org.assertj.core.api.Assertions.within(1e-9));
        double before = 0;
        double step = Double.POSITIVE_INFINITY;
        for (double now : returns) {
            assertThat(now - before).isLessThan(step + 1e-9);
            step = now - before;
            before = now;
        }
    }

    @Test
    @DisplayName("promises no more than its area where no gain is known")
    void withoutGain() {
        assertThat(returns(0.5, 0.4, Double.NaN, 0.5)).containsExactly(0.25, 0.5, 0.75, 1.0);
    }
}
