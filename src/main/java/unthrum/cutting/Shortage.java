package unthrum.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A limited number of equal sheets: the search plans as if there were enough, and of each layout it comes upon the
 * emptiest sheets beyond the limit are done without. What is left of the layouts is compared, not the layouts
 * themselves: a better one with enough sheets may well leave more over without them.
 */
record Shortage(CuttingTask task, Stock sheet) {

    private Stock endless() {
        return Stock.unlimited(sheet.name(), sheet.width(), sheet.height()).with(sheet.defects());
    }

    /** The task with sheets enough. */
    CuttingTask relieved() {
        return new CuttingTask(task.pieces(), task.stock().stream().map(s -> s.equals(sheet) ? endless() : s).toList(),
            task.cuts(), task.knifeMargin());
    }

    /** What the stock in hand allows of a layout of the relieved task. */
    Filling within(Filling plenty) {
        List<Integer> whole = new ArrayList<>();
        for (int i = 0; i < plenty.stock().size(); i++) {
            if (plenty.stock().get(i).kind() == Stock.Kind.SHEET) {
                whole.add(i);
            }
        }
        whole.sort(Comparator.comparingLong(i -> plenty.pieceArea(plenty.blanksOn(i))));
        List<Integer> surplus = whole.subList(0, Math.max(0, whole.size() - sheet.count()));
        List<Stock> stock = new ArrayList<>();
        List<SheetSpace> spaces = new ArrayList<>();
        List<Blank> pool = new ArrayList<>(plenty.pool());
        for (int i = 0; i < plenty.stock().size(); i++) {
            if (surplus.contains(i)) {
                pool.addAll(plenty.blanksOn(i));
            } else {
                stock.add(plenty.stock().get(i).kind() == Stock.Kind.SHEET ? sheet : plenty.stock().get(i));
                spaces.add(plenty.spaces().get(i));
            }
        }
        return Filling.of(task, stock, spaces, pool);
    }
}
