package unthrum.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What a sheet holds at most, by one dual feasible function across and one along.
 *
 * @param across of widths
 * @param along  of heights
 */
record Measure(DualFeasible across, DualFeasible along) {

    /** So many measures are worth asking: those that come nearest to a proof by themselves. */
    private static final int MOST = 40;

    private record Rated(Measure measure, double sheets) {
    }

    /** The measures by which these blanks take most sheets. */
    static List<Measure> telling(List<Raised> blanks, int width, int height) {
        List<Rated> rated = new ArrayList<>();
        for (DualFeasible across : DualFeasible.family(width, lengths(blanks, 0))) {
            for (DualFeasible along : DualFeasible.family(height, lengths(blanks, 1))) {
                Measure measure = new Measure(across, along);
                rated.add(new Rated(measure, measure.sheets(blanks)));
            }
        }
        rated.sort(Comparator.comparingDouble(Rated::sheets).reversed());
        return rated.stream().limit(MOST).map(Rated::measure).toList();
    }

    private static int[] lengths(List<Raised> blanks, int side) {
        return blanks.stream().flatMap(b -> b.ways().stream()).mapToInt(way -> way[side]).distinct().toArray();
    }

    long capacity() {
        return across.capacity() * along.capacity();
    }

    long of(int[] size) {
        return across.of(size[0]) * along.of(size[1]);
    }

    private double sheets(List<Raised> blanks) {
        long sum = 0;
        for (Raised blank : blanks) {
            sum += blank.ways().stream().mapToLong(this::of).min().orElseThrow();
        }
        return (double) sum / capacity();
    }
}
