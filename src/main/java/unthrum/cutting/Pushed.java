package unthrum.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Pushes what lies loose on a sheet down and to the left as far as it goes, so that what is left over hangs together.
 */
final class Pushed {

    private Pushed() {
    }

    /** The same blanks, each resting below and on its left against another or the edge. */
    static List<Placed> toTheCorner(List<Placed> placed) {
        List<Placed> before = placed;
        List<Placed> after = left(down(before));
        while (!after.equals(before)) {
            before = after;
            after = left(down(before));
        }
        return after;
    }

    private static List<Placed> down(List<Placed> placed) {
        List<Placed> settled = new ArrayList<>();
        placed.stream().sorted(Comparator.comparingInt(Placed::y).thenComparingInt(Placed::x)).forEach(p -> {
            int y = settled.stream().filter(o -> o.x() < p.right() && o.right() > p.x()).mapToInt(Placed::top)
                .max().orElse(0);
            settled.add(p.at(p.x(), y));
        });
        return settled;
    }

    private static List<Placed> left(List<Placed> placed) {
        List<Placed> settled = new ArrayList<>();
        placed.stream().sorted(Comparator.comparingInt(Placed::x).thenComparingInt(Placed::y)).forEach(p -> {
            int x = settled.stream().filter(o -> o.y() < p.top() && o.top() > p.y()).mapToInt(Placed::right)
                .max().orElse(0);
            settled.add(p.at(x, p.y()));
        });
        return settled;
    }
}
