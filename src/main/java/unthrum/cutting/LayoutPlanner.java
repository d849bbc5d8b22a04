package unthrum.cutting;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;

/** Plans cutting layouts: fewest sheets and then the largest usable offcut, or the least length of a roll. */
public final class LayoutPlanner {

    private LayoutPlanner() {
    }

    /**
     * The best layout found within the search's limits, with a proved bound. Pieces too large for every stock, and
     * pieces for which the stock does not suffice, are listed as unplaced. With sheets of one size these are the pieces
     * of the emptiest sheets of a layout with as many sheets as it takes, so a sheet more in stock never makes it
     * worse; neither do more steps.
     */
    public static CuttingLayout plan(CuttingTask task, Search search) {
        List<Stock> sheets = task.stock().stream().filter(s -> s.kind() == Stock.Kind.SHEET).toList();
        if (sheets.size() != 1) {
            return search(task, search, UnaryOperator.identity());
        }
        Shortage shortage = new Shortage(task, sheets.get(0));
        return search(shortage.relieved(), search, shortage::within);
    }

    private static CuttingLayout search(CuttingTask task, Search search, UnaryOperator<Filling> inHand) {
        List<Blank> blanks = Blank.of(task);
        if (blanks.isEmpty()) {
            return inHand.apply(Filling.of(task, List.of(), List.of(), List.of())).layout(0);
        }
        Watch watch = new Watch(search, bound(task, blanks));
        SplittableRandom random = new SplittableRandom(search.seed());
        Filling best = task.fromRoll() && task.cuts() == CutRule.FREE
            ? new RollSearch(task, blanks, watch, random).run()
            : new SheetSearch(task, blanks, watch, random, inHand).run();
        return best.layout(watch.bound());
    }

    private static int bound(CuttingTask task, List<Blank> blanks) {
        int margin = task.knifeMargin();
        return task.fromRoll() ? LowerBound.rollLength(task.stock().get(0).width() + margin, blanks) - margin
            : LowerBound.wholeSheets(task, blanks);
    }
}
