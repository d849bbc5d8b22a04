package unthrum.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The lower bound")
class LowerBoundTest {

    private static List<Blank> blanks(int width, int height, int count, boolean mayTurn) {
        return Collections.nCopies(count, new Blank(0, width, height, mayTurn));
    }

    @Test
    @DisplayName("sees that no two pieces of more than half a sheet each way share one, where area alone would let them")
    void large() {
        assertThat(LowerBound.sheets(10, 10, blanks(6, 6, 4, false))).isEqualTo(4);
        assertThat(LowerBound.sheets(10, 10, blanks(6, 7, 4, true))).isEqualTo(4);
    }

    @Test
    @DisplayName("sees that only four pieces of more than a third each way share a sheet")
    void thirds() {
        assertThat(LowerBound.sheets(9, 9, blanks(4, 4, 9, false))).isEqualTo(3);
    }

    @Test
    @DisplayName("of a roll adds up pieces that cannot lie side by side")
    void roll() {
        assertThat(LowerBound.rollLength(10, blanks(6, 5, 3, false))).isEqualTo(15);
    }

    @Property(tries = 2000)
    void lengthsThatFitHaveValuesThatFit(@ForAll @IntRange(min = 1, max = 60) int length,
                                         @ForAll @Size(min = 1, max = 8) List<@IntRange(min = 1, max = 60) Integer> drawn) {
        int sum = drawn.stream().mapToInt(Integer::intValue).sum();
        if (sum > length) {
            return;
        }
        int[] lengths = drawn.stream().mapToInt(Integer::intValue).toArray();
        for (DualFeasible f : DualFeasible.family(length, lengths)) {
            assertThat(drawn.stream().mapToLong(f::of).sum()).as("%s", f).isLessThanOrEqualTo(f.capacity());
        }
    }
}
