package unthrum.cutting;

import java.util.List;
import java.util.SplittableRandom;

/** Plans cutting layouts: fewest sheets and then the largest usable offcut, or the least length of a roll. */
public final class LayoutPlanner {

    private LayoutPlanner() {
    }

    /**
     * The best layout found within the search's limits, with a proved bound. Pieces too large for every stock, and
     * pieces for which the stock does not suffice, are listed as unplaced.
     */
    public static CuttingLayout plan(CuttingTask task, Search search) {
        List<Blank> blanks = Blank.of(task);
        if (blanks.isEmpty()) {
            return new CuttingLayout(task, List.of(), task.tooLarge(), 0);
        }
        int bound = bound(task, blanks);
        Watch watch = new Watch(search, bound);
        SplittableRandom random = new SplittableRandom(search.seed());
        Filling best = task.fromRoll() && task.cuts() == CutRule.FREE
            ? new RollSearch(task, blanks, bound, watch, random).run()
            : new SheetSearch(task, blanks, bound, watch, random).run();
        return best.layout(bound);
    }

    private static int bound(CuttingTask task, List<Blank> blanks) {
        int margin = task.knifeMargin();
        return task.fromRoll() ? LowerBound.rollLength(task.stock().get(0).width() + margin, blanks) - margin
            : LowerBound.wholeSheets(task, blanks);
    }
}
