package unthrum.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;

/**
 * A layout as the search holds it: stock opened, each with its space, and what is not placed. Rank, as the finished
 * layout would be judged: least area of pieces left over, fewest whole sheets, least area of them, shortest roll or
 * largest usable offcut. A whole sheet with nothing on it is not part of it, an unused offcut counts for nothing.
 */
record Filling(CuttingTask task, List<Stock> stock, List<SheetSpace> spaces, List<Blank> pool, long[] rank) {

    static Filling of(CuttingTask task, List<Stock> stock, List<SheetSpace> spaces, List<Blank> pool) {
        List<Stock> kept = new ArrayList<>();
        List<SheetSpace> keptSpaces = new ArrayList<>();
        long whole = 0;
        long area = 0;
        long last = 0;
        for (int i = 0; i < stock.size(); i++) {
            Stock s = stock.get(i);
            SheetSpace space = spaces.get(i);
            boolean used = space.size() > 0;
            if (used || s.kind() == Stock.Kind.OFFCUT) {
                kept.add(s);
                keptSpaces.add(space);
            }
            whole += used && s.kind() == Stock.Kind.SHEET ? 1 : 0;
            area += used && s.kind() == Stock.Kind.SHEET ? s.area() : 0;
            last = task.fromRoll() ? used(space, false) : Math.min(last, used ? -offcut(s, space, task) : 0);
        }
        return new Filling(task, List.copyOf(kept), List.copyOf(keptSpaces), List.copyOf(pool),
            new long[] {pieceArea(task, pool), whole, area, last});
    }

    /** Area of the pieces that these blanks are cut for, without the knife margin. */
    long pieceArea(List<Blank> blanks) {
        return pieceArea(task, blanks);
    }

    private static long pieceArea(CuttingTask task, List<Blank> blanks) {
        return blanks.stream().map(b -> task.pieces().get(b.piece()))
            .mapToLong(p -> (long) p.width() * p.height()).sum();
    }

    List<Blank> blanksOn(int sheet) {
        return spaces.get(sheet).placed().stream().map(Placed::blank).toList();
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
