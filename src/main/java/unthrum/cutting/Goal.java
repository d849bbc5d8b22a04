package unthrum.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** A better layout to be reached from the best one: other stock, or less room on one sheet, and the search for it. */
final class Goal {

    private final Filling from;
    private final List<Stock> stock;
    private final Refill refill;

    private Goal(Filling from, List<Stock> stock, List<SheetSpace> spaces, List<Blank> pool, SplittableRandom random) {
        this.from = from;
        this.stock = stock;
        this.refill = new Refill(spaces, pool, random);
    }

    /** To place what is left over in the stock there is. */
    static Goal placeAll(Filling from, SplittableRandom random) {
        return new Goal(from, from.stock(), from.spaces(), from.pool(), random);
    }

    /** To do without one sheet. */
    static Goal without(Filling from, int sheet, SplittableRandom random) {
        List<Stock> stock = new ArrayList<>(from.stock());
        List<SheetSpace> spaces = new ArrayList<>(from.spaces());
        stock.remove(sheet);
        List<Blank> pool = new ArrayList<>(from.pool());
        spaces.remove(sheet).placed().forEach(p -> pool.add(p.blank()));
        return new Goal(from, stock, spaces, pool, random);
    }

    /** To take a smaller sheet in place of one. */
    static Goal smaller(Filling from, int sheet, Stock smaller, SplittableRandom random) {
        List<Stock> stock = new ArrayList<>(from.stock());
        stock.set(sheet, smaller);
        int margin = from.task().knifeMargin();
        if (!smaller.defects().isEmpty() || !from.stock().get(sheet).defects().isEmpty()) {
            List<SheetSpace> spaces = new ArrayList<>(from.spaces());
            spaces.set(sheet, SheetSpace.blank(smaller, from.task().cuts(), margin));
            List<Blank> pool = new ArrayList<>(from.pool());
            pool.addAll(from.blanksOn(sheet));
            return new Goal(from, stock, spaces, pool, random);
        }
        return resized(from, stock, sheet, smaller.width() + margin, smaller.height() + margin, random);
    }

    /** To leave a band of one sheet, or the end of a roll, untouched. */
    static Goal tighter(Filling from, int sheet, int width, int height, SplittableRandom random) {
        return resized(from, from.stock(), sheet, width, height, random);
    }

    private static Goal resized(Filling from, List<Stock> stock, int sheet, int width, int height,
                                SplittableRandom random) {
        List<SheetSpace> spaces = new ArrayList<>(from.spaces());
        List<Blank> pool = new ArrayList<>(from.pool());
        spaces.set(sheet, spaces.get(sheet).resized(width, height, pool));
        return new Goal(from, stock, spaces, pool, random);
    }

    /** Searches on for so many steps; the better filling if the goal was reached, else null. */
    Filling pursue(int steps, Watch watch) {
        for (int i = 0; i < steps && !refill.done() && watch.step(); i++) {
            refill.step();
        }
        return refill.done() ? reached() : null;
    }

    private Filling reached() {
        List<SheetSpace> full = new ArrayList<>();
        List<SheetSpace> spaces = refill.sheets();
        int margin = from.task().knifeMargin();
        for (int i = 0; i < spaces.size(); i++) {
            Stock s = stock.get(i);
            full.add(spaces.get(i).resized(s.width() + margin, s.height() + margin, new ArrayList<>()));
        }
        return Filling.of(from.task(), stock, full, List.of());
    }
}
