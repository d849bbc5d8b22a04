package unthrum.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** What holds of every layout that the planner makes. */
class LayoutPropertiesTest {

    private static final int STEPS = 300;

    private record Drawn(int width, int height, int count, boolean mayTurn) {
    }

    @Provide
    Arbitrary<CuttingTask> sheetTasks() {
        return Combinators.combine(pieces(), Arbitraries.integers().between(1, 4), Arbitraries.of(CutRule.class),
            Arbitraries.integers().between(0, 6), Arbitraries.of(true, false), Arbitraries.of(true, false))
            .as((pieces, sheets, cuts, margin, offcut, small) -> {
                List<Stock> stock = new ArrayList<>(List.of(Stock.sheets("sheet", 120, 90, sheets)));
                if (offcut) {
                    stock.add(Stock.offcut("offcut", 70, 60));
                }
                if (small) {
                    stock.add(Stock.sheets("small sheet", 80, 70, 2));
                }
                return new CuttingTask(pieces, stock, cuts, margin);
            });
    }

    @Provide
    Arbitrary<CuttingTask> rollTasks() {
        return Combinators.combine(pieces(), Arbitraries.of(CutRule.class), Arbitraries.integers().between(0, 6))
            .as((pieces, cuts, margin) ->
                new CuttingTask(pieces, List.of(Stock.roll("roll", 100)), cuts, margin));
    }

    private static Arbitrary<List<Piece>> pieces() {
        Arbitrary<Integer> length = Arbitraries.integers().between(3, 95);
        return Combinators.combine(length, length, Arbitraries.integers().between(1, 4), Arbitraries.of(true, false))
            .as(Drawn::new).list().ofMinSize(1).ofMaxSize(8)
            .map(all -> IntStream.range(0, all.size()).mapToObj(i -> new Piece("p" + i, all.get(i).width(),
                all.get(i).height(), all.get(i).count(), all.get(i).mayTurn())).toList());
    }

    private static long[] rank(CuttingLayout l) {
        return new long[] {l.unplacedArea(), l.cost(), l.sheetArea(), -l.largestOffcut()};
    }

    @Property(tries = 120)
    void everySheetLayoutPassesTheCheck(@ForAll("sheetTasks") CuttingTask task, @ForAll @LongRange(max = 99) long seed) {
        CuttingLayout layout = LayoutPlanner.plan(task, Search.ofSteps(seed, STEPS));
        assertThat(LayoutCheck.faults(layout)).isEmpty();
        assertThat(layout.unplaced()).containsAll(task.tooLarge());
        if (layout.unplaced().equals(task.tooLarge())) {
            assertThat(layout.cost()).isGreaterThanOrEqualTo(layout.bound());
        }
    }

    @Property(tries = 60)
    void everyRollLayoutPassesTheCheck(@ForAll("rollTasks") CuttingTask task, @ForAll @LongRange(max = 99) long seed) {
        CuttingLayout layout = LayoutPlanner.plan(task, Search.ofSteps(seed, STEPS));
        assertThat(LayoutCheck.faults(layout)).isEmpty();
        assertThat(layout.unplaced()).isEmpty();
        assertThat(layout.rollLength()).isGreaterThanOrEqualTo(layout.bound());
    }

    @Property(tries = 40)
    void sameSeedSameLayout(@ForAll("sheetTasks") CuttingTask task, @ForAll @LongRange(max = 99) long seed) {
        assertThat(LayoutPlanner.plan(task, Search.ofSteps(seed, STEPS)))
            .isEqualTo(LayoutPlanner.plan(task, Search.ofSteps(seed, STEPS)));
    }

    @Property(tries = 200)
    void moreStepsAreNeverWorse(@ForAll("sheetTasks") CuttingTask task, @ForAll @IntRange(max = 400) int steps,
                                @ForAll @IntRange(max = 400) int more) {
        long[] shorter = rank(LayoutPlanner.plan(task, Search.ofSteps(7, steps)));
        long[] longer = rank(LayoutPlanner.plan(task, Search.ofSteps(7, steps + more)));
        assertThat(Arrays.compare(longer, shorter)).isNotPositive();
    }

    @Property(tries = 60)
    void moreStepsNeverTakeMoreOfARoll(@ForAll("rollTasks") CuttingTask task, @ForAll @IntRange(max = 400) int steps,
                                       @ForAll @IntRange(max = 400) int more) {
        assertThat(LayoutPlanner.plan(task, Search.ofSteps(7, steps + more)).rollLength())
            .isLessThanOrEqualTo(LayoutPlanner.plan(task, Search.ofSteps(7, steps)).rollLength());
    }

    @Property(tries = 60)
    void oneMoreSheetInStockIsNeverWorse(@ForAll @IntRange(min = 1, max = 6) int sheets,
                                         @ForAll("sheetTasks") CuttingTask task) {
        long[] fewer = rank(with(task, sheets));
        long[] more = rank(with(task, sheets + 1));
        assertThat(Arrays.compare(more, fewer)).isNotPositive();
    }

    private static CuttingLayout with(CuttingTask task, int sheets) {
        return LayoutPlanner.plan(new CuttingTask(task.pieces(), List.of(Stock.sheets("sheet", 120, 90, sheets)),
            task.cuts(), task.knifeMargin()), Search.ofSteps(7, STEPS));
    }
}
