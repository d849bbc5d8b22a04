package unthrum.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A sheet for free cuts, kept as the list of its maximal free rectangles, which may overlap. A blank goes into the
 * lower left corner of one of them (maximal rectangles: Jylänki 2010).
 */
final class FreeSpace extends SheetSpace {

    private final List<Placed> placed;
    private int[] left;
    private int[] low;
    private int[] right;
    private int[] top;
    private int gaps;

    FreeSpace(int width, int height) {
        super(width, height);
        placed = new ArrayList<>();
        left = new int[16];
        low = new int[16];
        right = new int[16];
        top = new int[16];
        clear();
    }

    /** A sheet on which these lie already. */
    static SheetSpace of(int width, int height, List<Placed> placed) {
        FreeSpace space = new FreeSpace(width, height);
        space.placed.addAll(placed);
        placed.forEach(space::carve);
        return space.withFreeArea((long) width * height - placed.stream().mapToLong(p -> p.blank().area()).sum());
    }

    private FreeSpace(FreeSpace other) {
        super(other.width, other.height);
        placed = new ArrayList<>(other.placed);
        left = other.left.clone();
        low = other.low.clone();
        right = other.right.clone();
        top = other.top.clone();
        gaps = other.gaps;
    }

    @Override
    SheetSpace copy() {
        return new FreeSpace(this).withFreeArea(freeArea());
    }

    @Override
    SheetSpace sized(int newWidth, int newHeight) {
        return of(newWidth, newHeight, placed);
    }

    @Override
    List<Placed> placed() {
        return placed;
    }

    @Override
    int size() {
        return placed.size();
    }

    @Override
    void offer(int blankWidth, int blankHeight, FitRule rule, SplittableRandom random, Spot spot) {
        for (int i = 0; i < gaps; i++) {
            int gapWidth = right[i] - left[i];
            int gapHeight = top[i] - low[i];
            if (gapWidth < blankWidth || gapHeight < blankHeight) {
                continue;
            }
            long score = rule.score(gapWidth, gapHeight, blankWidth, blankHeight);
            if (score < spot.score && !overlook(random)) {
                spot.take(score, this, i, false, blankWidth, blankHeight);
            }
        }
    }

    @Override
    void join(Blank blank, Spot spot) {
        Placed at = new Placed(blank, left[spot.slot], low[spot.slot], spot.width, spot.height);
        placed.add(at);
        carve(at);
    }

    @Override
    void drop(boolean[] removed) {
        int kept = 0;
        for (int i = 0; i < removed.length; i++) {
            if (!removed[i]) {
                placed.set(kept++, placed.get(i));
            }
        }
        placed.subList(kept, placed.size()).clear();
        clear();
        placed.forEach(this::carve);
    }

    private void clear() {
        gaps = 0;
        add(0, 0, width, height);
    }

    /** Takes the placed rectangle out of every gap that it touches, then drops gaps inside others. */
    private void carve(Placed p) {
        int old = gaps;
        int kept = 0;
        int[] hit = new int[old];
        int hits = 0;
        for (int i = 0; i < old; i++) {
            if (p.x() < right[i] && p.right() > left[i] && p.y() < top[i] && p.top() > low[i]) {
                hit[hits++] = i;
            }
        }
        for (int k = 0; k < hits; k++) {
            split(hit[k], p);
        }
        int next = 0;
        for (int i = 0; i < gaps; i++) {
            if (next < hits && hit[next] == i) {
                next++;
            } else {
                move(i, kept++);
            }
        }
        gaps = kept;
        dropInner(old - hits);
    }

    private void split(int i, Placed p) {
        if (p.x() > left[i]) {
            add(left[i], low[i], p.x(), top[i]);
        }
        if (p.right() < right[i]) {
            add(p.right(), low[i], right[i], top[i]);
        }
        if (p.y() > low[i]) {
            add(left[i], low[i], right[i], p.y());
        }
        if (p.top() < top[i]) {
            add(left[i], p.top(), right[i], top[i]);
        }
    }

    /** Only the new gaps, from {@code fresh} on, can lie inside others. */
    private void dropInner(int fresh) {
        int kept = fresh;
        for (int i = fresh; i < gaps; i++) {
            if (!inner(i, fresh, kept)) {
                move(i, kept++);
            }
        }
        gaps = kept;
    }

    private boolean inner(int i, int fresh, int kept) {
        for (int j = 0; j < kept; j++) {
            if (within(i, j)) {
                return true;
            }
        }
        for (int j = i + 1; j < gaps; j++) {
            if (within(i, j)) {
                return true;
            }
        }
        return false;
    }

    private boolean within(int i, int j) {
        return left[j] <= left[i] && low[j] <= low[i] && right[j] >= right[i] && top[j] >= top[i];
    }

    private void move(int from, int to) {
        left[to] = left[from];
        low[to] = low[from];
        right[to] = right[from];
        top[to] = top[from];
    }

    private void add(int newLeft, int newLow, int newRight, int newTop) {
        if (gaps == left.length) {
            left = Arrays.copyOf(left, 2 * gaps);
            low = Arrays.copyOf(low, 2 * gaps);
            right = Arrays.copyOf(right, 2 * gaps);
            top = Arrays.copyOf(top, 2 * gaps);
        }
        left[gaps] = newLeft;
        low[gaps] = newLow;
        right[gaps] = newRight;
        top[gaps] = newTop;
        gaps++;
    }
}
