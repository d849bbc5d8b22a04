package unthrum.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The maximal free rectangles of a sheet, which may overlap, or only those of them that reach into a window. Each takes
 * four numbers: left, low, right, top. Kept as plain numbers, as the search asks millions of times.
 */
final class Gaps {

    private static final int LEFT = 0;
    private static final int LOW = 1;
    private static final int RIGHT = 2;
    private static final int TOP = 3;
    private static final int APART = -1;

    private final List<Defect> defects;
    private final int windowLeft;
    private final int windowLow;
    private final int windowRight;
    private final int windowTop;
    private int[] edges;
    private int count;
    private int firstNew;
    /** What is left of the gaps that a blank cuts into, and which of their edges lies at the blank. */
    private int[] parts = new int[64];
    private int[] atBlank = new int[16];
    private int partCount;
    /** The gaps that lie at the blank, and with which of their edges. */
    private int[] neighbours = new int[16];
    private int[] nextTo = new int[16];
    private int neighbourCount;

    /** A whole sheet, of which all gaps count that reach into the window. */
    private Gaps(int width, int height, int left, int low, int right, int top, List<Defect> defects) {
        this.defects = defects;
        windowLeft = left;
        windowLow = low;
        windowRight = right;
        windowTop = top;
        edges = new int[64];
        add(0, 0, width, height);
        defects.forEach(d -> carve(d.x(), d.y(), d.right(), d.top()));
    }

    static Gaps whole(int width, int height) {
        return whole(width, height, List.of());
    }

    /** All of a sheet but its defects. */
    static Gaps whole(int width, int height, List<Defect> defects) {
        return new Gaps(width, height, 0, 0, width, height, defects);
    }

    Gaps(Gaps other) {
        defects = other.defects;
        windowLeft = other.windowLeft;
        windowLow = other.windowLow;
        windowRight = other.windowRight;
        windowTop = other.windowTop;
        edges = other.edges.clone();
        count = other.count;
    }

    int count() {
        return count;
    }

    /** From here on the gaps are what the last one carved has left. */
    int firstNew() {
        return firstNew;
    }

    int left(int i) {
        return edges[4 * i + LEFT];
    }

    int low(int i) {
        return edges[4 * i + LOW];
    }

    int width(int i) {
        return edges[4 * i + RIGHT] - edges[4 * i + LEFT];
    }

    int height(int i) {
        return edges[4 * i + TOP] - edges[4 * i + LOW];
    }

    /** Takes the placed rectangle out of every gap that it touches. */
    void carve(Placed p) {
        carve(p.x(), p.y(), p.right(), p.top());
    }

    private void carve(int left, int low, int right, int top) {
        int[] all = edges;
        int kept = 0;
        partCount = 0;
        neighbourCount = 0;
        for (int i = 0; i < 4 * count; i += 4) {
            if (left < all[i + RIGHT] && right > all[i + LEFT] && low < all[i + TOP] && top > all[i + LOW]) {
                split(i, left, low, right, top);
            } else {
                meet(kept, all[i + RIGHT] == left ? RIGHT : all[i + LEFT] == right ? LEFT
                    : all[i + TOP] == low ? TOP : all[i + LOW] == top ? LOW : APART);
                if (kept < i) {
                    set(all, kept, all[i + LEFT], all[i + LOW], all[i + RIGHT], all[i + TOP]);
                }
                kept += 4;
            }
        }
        count = kept / 4;
        firstNew = count;
        addOuterParts();
    }

    /** Notes a gap that ends with this edge where the blank begins. */
    private void meet(int gap, int edge) {
        if (edge == APART) {
            return;
        }
        if (neighbourCount == neighbours.length) {
            neighbours = Arrays.copyOf(neighbours, 2 * neighbourCount);
            nextTo = Arrays.copyOf(nextTo, 2 * neighbourCount);
        }
        neighbours[neighbourCount] = gap;
        nextTo[neighbourCount++] = edge;
    }

    private void split(int i, int left, int low, int right, int top) {
        if (left > edges[i + LEFT]) {
            part(RIGHT, edges[i + LEFT], edges[i + LOW], left, edges[i + TOP]);
        }
        if (right < edges[i + RIGHT]) {
            part(LEFT, right, edges[i + LOW], edges[i + RIGHT], edges[i + TOP]);
        }
        if (low > edges[i + LOW]) {
            part(TOP, edges[i + LEFT], edges[i + LOW], edges[i + RIGHT], low);
        }
        if (top < edges[i + TOP]) {
            part(LOW, edges[i + LEFT], top, edges[i + RIGHT], edges[i + TOP]);
        }
    }

    private void part(int edge, int left, int low, int right, int top) {
        if (left >= windowRight || right <= windowLeft || low >= windowTop || top <= windowLow) {
            return;
        }
        if (partCount == atBlank.length) {
            parts = Arrays.copyOf(parts, 2 * parts.length);
            atBlank = Arrays.copyOf(atBlank, 2 * partCount);
        }
        set(parts, 4 * partCount, left, low, right, top);
        atBlank[partCount++] = edge;
    }

    /** Parts inside no other gap stay; what holds a part ends at the blank with the same edge. */
    private void addOuterParts() {
        for (int i = 0; i < partCount; i++) {
            if (insideNeighbour(i) || insidePart(i)) {
                atBlank[i] = APART;
            } else {
                add(parts[4 * i + LEFT], parts[4 * i + LOW], parts[4 * i + RIGHT], parts[4 * i + TOP]);
            }
        }
    }

    private boolean insideNeighbour(int part) {
        for (int j = 0; j < neighbourCount; j++) {
            if (nextTo[j] == atBlank[part] && within(parts, 4 * part, edges, neighbours[j])) {
                return true;
            }
        }
        return false;
    }

    /** Inside another part that stays or is still to be judged. */
    private boolean insidePart(int part) {
        for (int j = 0; j < partCount; j++) {
            if (j != part && atBlank[j] == atBlank[part] && within(parts, 4 * part, parts, 4 * j)) {
                return true;
            }
        }
        return false;
    }

    private static boolean within(int[] inner, int i, int[] outer, int j) {
        return outer[j + LEFT] <= inner[i + LEFT] && outer[j + LOW] <= inner[i + LOW]
            && outer[j + RIGHT] >= inner[i + RIGHT] && outer[j + TOP] >= inner[i + TOP];
    }

    /** The gaps once these are gone and only the others are left: new around the gone ones, elsewhere as they are. */
    Gaps without(List<Placed> gone, List<Placed> others, int width, int height) {
        int left = width;
        int low = height;
        int right = 0;
        int top = 0;
        for (Placed p : gone) {
            left = Math.min(left, p.x());
            low = Math.min(low, p.y());
            right = Math.max(right, p.right());
            top = Math.max(top, p.top());
        }
        Gaps around = new Gaps(width, height, left, low, right, top, defects);
        nearestFirst(others, left, low, right, top).forEach(around::carve);
        Gaps all = whole(width, height, defects);
        all.edges = around.edges;
        all.count = around.count;
        for (int i = 0; i < 4 * count; i += 4) {
            if (!around.windowReaches(edges, i) && !around.holds(edges, i)) {
                all.add(edges[i + LEFT], edges[i + LOW], edges[i + RIGHT], edges[i + TOP]);
            }
        }
        return all;
    }

    /** What lies near cuts the gaps small at once, so that little is left to carve for what lies far. */
    private static List<Placed> nearestFirst(List<Placed> placed, int left, int low, int right, int top) {
        long[] keys = new long[placed.size()];
        for (int i = 0; i < keys.length; i++) {
            Placed p = placed.get(i);
            long across = Math.max(0, Math.max(left - p.right(), p.x() - right));
            long along = Math.max(0, Math.max(low - p.top(), p.y() - top));
            keys[i] = (across + along) * keys.length + i;
        }
        Arrays.sort(keys);
        List<Placed> sorted = new ArrayList<>(keys.length);
        for (long key : keys) {
            sorted.add(placed.get((int) (key % keys.length)));
        }
        return sorted;
    }

    private boolean windowReaches(int[] gap, int i) {
        return windowLeft < gap[i + RIGHT] && windowRight > gap[i + LEFT]
            && windowLow < gap[i + TOP] && windowTop > gap[i + LOW];
    }

    private boolean holds(int[] gap, int i) {
        for (int j = 0; j < count; j++) {
            if (within(gap, i, edges, 4 * j)) {
                return true;
            }
        }
        return false;
    }

    private void copy(int from, int to) {
        set(edges, to, edges[from + LEFT], edges[from + LOW], edges[from + RIGHT], edges[from + TOP]);
    }

    private void add(int left, int low, int right, int top) {
        if (4 * count == edges.length) {
            edges = Arrays.copyOf(edges, 8 * count);
        }
        set(edges, 4 * count++, left, low, right, top);
    }

    private static void set(int[] all, int at, int left, int low, int right, int top) {
        all[at + LEFT] = left;
        all[at + LOW] = low;
        all[at + RIGHT] = right;
        all[at + TOP] = top;
    }
}
