package unthrum.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;

/**
 * A layout as the search holds it: stock opened, each with its space, and what is not placed. Rank: least area left
 * unplaced, fewest whole sheets, least area of them, shortest roll or largest usable offcut.
 */
record Filling(CuttingTask task, List<Stock> stock, List<SheetSpace> spaces, List<Blank> pool, long[] rank) {

    static Filling of(CuttingTask task, List<Stock> stock, List<SheetSpace> spaces, List<Blank> pool) {
        long unplaced = pool.stream().mapToLong(Blank::area).sum();
        long whole = stock.stream().filter(s -> s.kind() == Stock.Kind.SHEET).count();
        long area = stock.stream().filter(s -> s.kind() == Stock.Kind.SHEET).mapToLong(Stock::area).sum();
        long last = 0;
        for (int i = 0; i < stock.size(); i++) {
            last = Math.min(last, task.fromRoll() ? 0 : -offcut(stock.get(i), spaces.get(i), task));
            last = task.fromRoll() ? used(spaces.get(i), false) : last;
        }
        return new Filling(task, List.copyOf(stock), List.copyOf(spaces), List.copyOf(pool),
            new long[] {unplaced, whole, area, last});
    }

    boolean betterThan(Filling other) {
        return Arrays.compare(rank, other.rank) < 0;
    }

    /** Whole sheets, or the length of roll. */
    int cost() {
        return (int) (task.fromRoll() ? Math.max(0, rank[3] - task.knifeMargin()) : rank[1]);
    }

    long largestOffcut() {
        return task.fromRoll() ? 0 : -rank[3];
    }

    /** The right or upper edge of what lies in the space, margin included. */
    static int used(SheetSpace space, boolean across) {
        return space.placed().stream().mapToInt(p -> across ? p.right() : p.top()).max().orElse(0);
    }

    private static long offcut(Stock stock, SheetSpace space, CuttingTask task) {
        return sheet(task, stock, space).offcutArea(task.knifeMargin());
    }

    private static SheetLayout sheet(CuttingTask task, Stock stock, SheetSpace space) {
        return new SheetLayout(stock, space.placed().stream().map(p -> p.placement(task)).toList());
    }

    CuttingLayout layout(int bound) {
        List<SheetLayout> sheets = new ArrayList<>();
        for (int i = 0; i < stock.size(); i++) {
            if (spaces.get(i).size() > 0) {
                sheets.add(sheet(task, stock.get(i), spaces.get(i)));
            }
        }
        List<Piece> unplaced = new ArrayList<>(task.tooLarge());
        TreeMap<Integer, Integer> left = new TreeMap<>();
        pool.forEach(b -> left.merge(b.piece(), 1, Integer::sum));
        left.forEach((index, count) -> {
            Piece piece = task.pieces().get(index);
            unplaced.add(new Piece(piece.name(), piece.width(), piece.height(), count, piece.mayTurn()));
        });
        return new CuttingLayout(task, sheets, unplaced, bound);
    }
}
