package unthrum.cutting;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * What is to be cut from what.
 *
 * @param pieces      the pieces wanted
 * @param stock       sheets and offcuts, or one roll
 * @param cuts        free or guillotine cuts
 * @param knifeMargin least gap between neighbouring pieces, tenths of a millimetre; none is needed at the edge
 */
public record CuttingTask(List<Piece> pieces, List<Stock> stock, CutRule cuts, int knifeMargin) {

    public CuttingTask {
        pieces = List.copyOf(pieces);
        stock = List.copyOf(stock);
        requireUnique("piece", pieces, Piece::name);
        requireUnique("stock", stock, Stock::name);
        if (knifeMargin < 0 || knifeMargin > Lengths.LONGEST) {
            throw new IllegalArgumentException("knife margin is " + knifeMargin + ", expected 0 to " + Lengths.LONGEST);
        }
        if (stock.size() > 1 && stock.stream().anyMatch(s -> s.kind() == Stock.Kind.ROLL)) {
            throw new IllegalArgumentException("a roll is cut by itself: plan sheets and offcuts as another task");
        }
    }

    /** Whether the task is cut from a roll, where length counts rather than sheets. */
    public boolean fromRoll() {
        return stock.size() == 1 && stock.get(0).kind() == Stock.Kind.ROLL;
    }

    /** The pieces that fit into no stock at all. */
    public List<Piece> tooLarge() {
        return pieces.stream()
            .filter(p -> stock.stream().noneMatch(s -> p.fitsInto(s)))
            .toList();
    }

    private static <T> void requireUnique(String what, List<T> all, Function<T, String> name) {
        Set<String> seen = new HashSet<>();
        for (T each : all) {
            if (!seen.add(name.apply(each))) {
                throw new IllegalArgumentException("two of one " + what + " name: " + name.apply(each));
            }
        }
    }
}
