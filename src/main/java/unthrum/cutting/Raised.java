package unthrum.cutting;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * A blank for proofs: its ways to lie on one kind of sheet, with lengths raised as far as no layout notices. Beside a
 * blank that takes w of the width W, others can take at most the largest sum of their lengths that is not over W - w;
 * what is never used counts as its own. Boschetti and Mingozzi, 4OR 1 (2003), there for blanks that do not turn.
 *
 * @param blank       the blank
 * @param ways        width and height as it may lie, raised; two ways if it may turn
 * @param firstTurned whether the first way is the turned one, as it fits no other way
 */
record Raised(Blank blank, List<int[]> ways, boolean firstTurned) {

    /** All blanks, the largest first and copies side by side, each raised with the others as raised before it. */
    static List<Raised> all(List<Blank> blanks, int width, int height) {
        List<Raised> all = across(blanks, width, height);
        raise(all, 1, height);
        return all;
    }

    /** Raised across only: where the least height is sought, the given one says nothing of how a column is filled. */
    static List<Raised> across(List<Blank> blanks, int width, int height) {
        List<Raised> all = blanks.stream()
            .sorted(Comparator.comparingLong(Blank::area).reversed().thenComparingInt(Blank::piece))
            .map(b -> lying(b, width, height)).toList();
        raise(all, 0, width);
        return all;
    }

    private static Raised lying(Blank blank, int width, int height) {
        List<int[]> ways = new ArrayList<>();
        boolean upright = blank.width() <= width && blank.height() <= height;
        if (upright) {
            ways.add(new int[] {blank.width(), blank.height()});
        }
        if (blank.mayTurn() && blank.height() <= width && blank.width() <= height) {
            ways.add(new int[] {blank.height(), blank.width()});
        }
        return new Raised(blank, List.copyOf(ways), !upright);
    }

    private static void raise(List<Raised> all, int side, int length) {
        for (Raised raised : all) {
            BitSet sums = sums(all, raised, side, length);
            for (int[] way : raised.ways) {
                way[side] = length - sums.previousSetBit(length - way[side]);
            }
        }
    }

    /** Which lengths the others can take side by side, each once at most and in either of its ways. */
    private static BitSet sums(List<Raised> all, Raised without, int side, int length) {
        BitSet sums = new BitSet(length + 1);
        sums.set(0);
        for (Raised other : all) {
            if (other == without) {
                continue;
            }
            BitSet before = (BitSet) sums.clone();
            for (int[] way : other.ways) {
                before.stream().takeWhile(sum -> sum + way[side] <= length).forEach(sum -> sums.set(sum + way[side]));
            }
        }
        return sums;
    }

    /** Whether this and another can lie on one sheet, side by side or one above the other. */
    boolean sharesWith(Raised other, int width, int height) {
        return ways.stream().anyMatch(a -> other.ways.stream()
            .anyMatch(b -> a[0] + b[0] <= width || a[1] + b[1] <= height));
    }

    /** The blank there, in its true size. */
    Placed placed(int way, int x, int y) {
        boolean turned = way > 0 || firstTurned;
        return turned ? new Placed(blank, x, y, blank.height(), blank.width())
            : new Placed(blank, x, y, blank.width(), blank.height());
    }
}
