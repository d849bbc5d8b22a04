package unthrum.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DisplayName;

/** The free rectangles of a sheet, held against a count of all rectangles on a small grid. */
@DisplayName("The gaps of a sheet")
class GapsTest {

    private static final int MOST = 3;

    @Property(tries = 300)
    void areAllThatCannotGrow(@ForAll @IntRange(min = 3, max = 9) int width,
                              @ForAll @IntRange(min = 3, max = 9) int height, @ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Gaps gaps = Gaps.whole(width, height);
        List<Placed> placed = new ArrayList<>();
        for (int step = 0; step < 20; step++) {
            if (random.nextInt(4) == 0) {
                List<Placed> gone = new ArrayList<>();
                List<Placed> kept = new ArrayList<>();
                placed.forEach(p -> (random.nextInt(3) == 0 ? gone : kept).add(p));
                gaps = gone.isEmpty() ? gaps : gaps.without(gone, kept, width, height);
                placed = kept;
            } else {
                Placed next = anywhere(width, height, random);
                if (placed.stream().noneMatch(p -> overlap(p, next))) {
                    placed.add(next);
                    List<List<Integer>> before = listed(gaps);
                    gaps.carve(next);
                    List<List<Integer>> after = listed(gaps);
                    assertThat(before).containsAll(after.subList(0, gaps.firstNew()));
                    assertThat(after.subList(gaps.firstNew(), gaps.count())).allMatch(gap -> !before.contains(gap));
                }
            }
            assertThat(listed(gaps)).containsExactlyInAnyOrderElementsOf(maximal(width, height, placed));
        }
    }

    private static Placed anywhere(int width, int height, SplittableRandom random) {
        Blank blank = new Blank(0, 1 + random.nextInt(MOST), 1 + random.nextInt(MOST), false);
        return new Placed(blank, random.nextInt(width - blank.width() + 1), random.nextInt(height - blank.height() + 1),
            blank.width(), blank.height());
    }

    private static boolean overlap(Placed a, Placed b) {
        return a.x() < b.right() && b.x() < a.right() && a.y() < b.top() && b.y() < a.top();
    }

    private static List<List<Integer>> listed(Gaps gaps) {
        List<List<Integer>> all = new ArrayList<>();
        for (int i = 0; i < gaps.count(); i++) {
            all.add(List.of(gaps.left(i), gaps.low(i), gaps.width(i), gaps.height(i)));
        }
        return all;
    }

    /** Every free rectangle that is stopped on all four sides. */
    private static List<List<Integer>> maximal(int width, int height, List<Placed> placed) {
        List<List<Integer>> all = new ArrayList<>();
        for (int x = 0; x < width; x++) {
            for (int y = 0; y < height; y++) {
                for (int w = 1; x + w <= width; w++) {
                    for (int h = 1; y + h <= height; h++) {
                        if (free(x, y, w, h, width, height, placed) && !free(x - 1, y, w + 1, h, width, height, placed)
                            && !free(x, y - 1, w, h + 1, width, height, placed)
                            && !free(x, y, w + 1, h, width, height, placed)
                            && !free(x, y, w, h + 1, width, height, placed)) {
                            all.add(List.of(x, y, w, h));
                        }
                    }
                }
            }
        }
        return all;
    }

    private static boolean free(int x, int y, int w, int h, int width, int height, List<Placed> placed) {
        Placed here = new Placed(new Blank(0, w, h, false), x, y, w, h);
        return x >= 0 && y >= 0 && here.right() <= width && here.top() <= height
            && placed.stream().noneMatch(p -> overlap(p, here));
    }
}
