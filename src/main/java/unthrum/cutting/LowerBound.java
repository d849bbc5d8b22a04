package unthrum.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** Proved lower bounds of sheets and of roll length, from pairs of {@link DualFeasible} functions. */
final class LowerBound {

    private LowerBound() {
    }

    /** Fewest whole sheets that any layout of all blanks needs. */
    static int wholeSheets(CuttingTask task, List<Blank> blanks) {
        if (blanks.isEmpty()) {
            return 0;
        }
        int margin = task.knifeMargin();
        int width = task.stock().stream().mapToInt(Stock::width).max().orElseThrow() + margin;
        int height = task.stock().stream().mapToInt(Stock::height).max().orElseThrow() + margin;
        long offcuts = task.stock().stream().filter(s -> s.kind() == Stock.Kind.OFFCUT).mapToLong(Stock::count).sum();
        long byShape = sheets(width, height, blanks) - offcuts;
        return (int) Math.max(0, Math.max(byShape, byArea(task, blanks)));
    }

    /** Fewest sheets by area alone, offcuts first, then the largest sheets. */
    private static long byArea(CuttingTask task, List<Blank> blanks) {
        long open = blanks.stream().mapToLong(Blank::area).sum();
        List<Stock> order = new ArrayList<>(task.stock());
        order.sort(Comparator.comparing((Stock s) -> s.kind() != Stock.Kind.OFFCUT)
            .thenComparing(Comparator.comparingLong(Stock::area).reversed()));
        long sheets = 0;
        for (Stock stock : order) {
            long area = (long) (stock.width() + task.knifeMargin()) * (stock.height() + task.knifeMargin());
            long used = Math.min(stock.count(), Math.max(0, -Math.floorDiv(-open, area)));
            open -= used * area;
            sheets += stock.kind() == Stock.Kind.SHEET ? used : 0;
        }
        return sheets;
    }

    /** Least length of a roll, margin included: by area and shape, then as the least that is not proved too short. */
    static int rollLength(int width, List<Blank> blanks) {
        if (blanks.isEmpty()) {
            return 0;
        }
        long area = blanks.stream().mapToLong(Blank::area).sum();
        int least = (int) -Math.floorDiv(-area, width);
        int enough = 0;
        for (Blank blank : blanks) {
            boolean turns = blank.mayTurn() && blank.height() <= width;
            least = Math.max(least, turns ? Math.min(blank.width(), blank.height()) : blank.height());
            enough = Math.addExact(enough, Math.max(blank.width(), blank.height()));
        }
        while (least < enough) {
            int middle = least + (enough - least) / 2;
            if (sheets(width, middle, blanks) > 1) {
                least = middle + 1;
            } else {
                enough = middle;
            }
        }
        return least;
    }

    /** Fewest sheets of one size; Integer.MAX_VALUE when a blank fits into none. */
    static int sheets(int width, int height, List<Blank> blanks) {
        if (blanks.stream().anyMatch(b -> !b.fitsInto(width, height))) {
            return Integer.MAX_VALUE;
        }
        TreeMap<Blank, Integer> kinds = new TreeMap<>(Comparator.comparingInt(Blank::width)
            .thenComparingInt(Blank::height).thenComparing(Blank::mayTurn));
        blanks.forEach(b -> kinds.merge(b, 1, Integer::sum));
        List<Blank> distinct = List.copyOf(kinds.keySet());
        long[] counts = kinds.values().stream().mapToLong(c -> c).toArray();
        List<DualFeasible> across = DualFeasible.family(width, lengths(distinct, true));
        List<DualFeasible> along = DualFeasible.family(height, lengths(distinct, false));
        long[][][] acrossValues = values(across, distinct);
        long[][][] alongValues = values(along, distinct);
        boolean square = width == height;
        long best = 1;
        for (int i = 0; i < across.size(); i++) {
            for (int j = 0; j < along.size(); j++) {
                long capacity = across.get(i).capacity() * along.get(j).capacity();
                long sum = sum(acrossValues[i], alongValues[j], distinct, counts, width, height);
                best = Math.max(best, -Math.floorDiv(-sum, capacity));
                if (square) {
                    long both = bothWays(acrossValues[i], alongValues[j], distinct, counts);
                    best = Math.max(best, -Math.floorDiv(-both, 2 * capacity));
                }
            }
        }
        return (int) best;
    }

    /** Each blank counts as it lies; one that may turn counts the less of its two ways. */
    private static long sum(long[][] f, long[][] g, List<Blank> kinds, long[] counts, int width, int height) {
        long sum = 0;
        for (int b = 0; b < counts.length; b++) {
            Blank blank = kinds.get(b);
            boolean lies = blank.width() <= width && blank.height() <= height;
            long value = lies ? f[0][b] * g[1][b] : Long.MAX_VALUE;
            if (blank.mayTurn() && blank.height() <= width && blank.width() <= height) {
                value = Math.min(value, f[1][b] * g[0][b]);
            }
            sum += counts[b] * value;
        }
        return sum;
    }

    /** On a square sheet the layout mirrored at the diagonal counts too, so the mean over both ways is allowed. */
    private static long bothWays(long[][] f, long[][] g, List<Blank> kinds, long[] counts) {
        long sum = 0;
        for (int b = 0; b < kinds.size(); b++) {
            sum += counts[b] * (f[0][b] * g[1][b] + f[1][b] * g[0][b]);
        }
        return sum;
    }

    private static int[] lengths(List<Blank> blanks, boolean width) {
        return blanks.stream().flatMapToInt(b -> b.mayTurn() ? IntStream.of(b.width(), b.height())
            : IntStream.of(width ? b.width() : b.height())).toArray();
    }

    /** Per function the values of all widths, then of all heights; lengths beyond the sheet count as the sheet's. */
    private static long[][][] values(List<DualFeasible> functions, List<Blank> kinds) {
        long[][][] values = new long[functions.size()][2][kinds.size()];
        for (int i = 0; i < values.length; i++) {
            DualFeasible f = functions.get(i);
            for (int b = 0; b < kinds.size(); b++) {
                values[i][0][b] = f.of(Math.min(f.length(), kinds.get(b).width()));
                values[i][1][b] = f.of(Math.min(f.length(), kinds.get(b).height()));
            }
        }
        return values;
    }
}
