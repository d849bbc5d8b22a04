package unthrum.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Ruin and recreate on a fixed set of sheets with a pool of blanks that do not fit yet: empties parts of a few sheets,
 * then fills up from the pool, and keeps what leaves less in the pool, or little more. The goal is an empty pool.
 * Ruin and recreate: Schrimpf et al., J. Comput. Phys. 159 (2000); goal-driven: Gardeyn and Wauters, EJOR 301 (2022);
 * blinks: Christiaens and Vanden Berghe, Transportation Science 54 (2020); acceptance: simulated annealing, Kirkpatrick
 * et al., Science 220 (1983), cooling over a fixed number of steps and then warm again, so it never settles for good.
 */
final class Refill {

    /** Steps from warm to cold. */
    private static final int COOLING = 10_000;
    /** Warm and cold, in mean areas of a blank: about so much more may be left in the pool. */
    private static final double WARM = 0.1;
    private static final double COLD = 0.002;
    /** A round takes something from at most so many sheets, so many blanks from each, or all in one case of so many. */
    private static final int MOST_SHEETS = 3;
    private static final int MOST_BLANKS = 12;
    private static final int EMPTY_ONE_IN = 4;
    private static final List<Comparator<Blank>> ORDERS = List.of(
        Comparator.comparingLong(Blank::area).reversed(),
        Comparator.comparingInt((Blank b) -> Math.max(b.width(), b.height())).reversed(),
        Comparator.comparingInt(Blank::width).reversed(),
        Comparator.comparingInt(Blank::height).reversed());

    private final SheetSpace[] sheets;
    private final SheetSpace[] saved;
    private List<Blank> pool;
    private long poolArea;
    private final double meanArea;
    private long steps;
    private final SplittableRandom random;
    private final Spot spot = new Spot();

    Refill(List<SheetSpace> sheets, List<Blank> pool, SplittableRandom random) {
        this.sheets = sheets.stream().map(SheetSpace::copy).toArray(SheetSpace[]::new);
        this.saved = new SheetSpace[sheets.size()];
        this.pool = new ArrayList<>(pool);
        this.poolArea = area(pool);
        this.random = random;
        List<Blank> all = new ArrayList<>(pool);
        sheets.forEach(sheet -> sheet.placed().forEach(p -> all.add(p.blank())));
        this.meanArea = (double) area(all) / Math.max(1, all.size());
    }

    boolean done() {
        return pool.isEmpty();
    }

    List<SheetSpace> sheets() {
        return Arrays.stream(sheets).map(SheetSpace::copy).toList();
    }

    /** One round of ruin and recreate. */
    void step() {
        Arrays.fill(saved, null);
        List<Blank> oldPool = pool;
        pool = new ArrayList<>(pool);
        ruin();
        sortPool();
        refill();
        long newArea = area(pool);
        if (newArea <= poolArea + allowance()) {
            poolArea = newArea;
        } else {
            pool = oldPool;
            for (int i = 0; i < sheets.length; i++) {
                sheets[i] = saved[i] == null ? sheets[i] : saved[i];
            }
        }
        steps++;
    }

    /** How much more may be left in the pool this time; strict mathematics, so that it is the same on every machine. */
    private double allowance() {
        double temperature = meanArea * WARM * StrictMath.pow(COLD / WARM, (double) (steps % COOLING) / COOLING);
        return -temperature * StrictMath.log(1 - random.nextDouble());
    }

    private void ruin() {
        int count = 1 + random.nextInt(Math.min(MOST_SHEETS, sheets.length));
        for (int i = 0; i < count; i++) {
            int sheet = random.nextInt(sheets.length);
            int size = sheets[sheet].size();
            if (size > 0) {
                touch(sheet);
                takeOut(sheets[sheet], size);
            }
        }
    }

    /** Takes a neighbourhood out of a sheet: all blanks, or those nearest to a random one. */
    private void takeOut(SheetSpace sheet, int size) {
        boolean[] removed = new boolean[size];
        List<Placed> placed = sheet.placed();
        int take = random.nextInt(EMPTY_ONE_IN) == 0 ? size : 1 + random.nextInt(Math.min(size, MOST_BLANKS));
        if (take == size) {
            Arrays.fill(removed, true);
        } else {
            markNearest(placed, placed.get(random.nextInt(size)), take, removed);
        }
        for (int i = 0; i < size; i++) {
            if (removed[i]) {
                pool.add(placed.get(i).blank());
            }
        }
        sheet.remove(removed);
    }

    private static void markNearest(List<Placed> placed, Placed centre, int take, boolean[] removed) {
        long[] keys = new long[removed.length];
        for (int i = 0; i < keys.length; i++) {
            keys[i] = gap(placed.get(i), centre) * keys.length + i;
        }
        Arrays.sort(keys);
        for (int i = 0; i < take; i++) {
            removed[(int) (keys[i] % keys.length)] = true;
        }
    }

    /** Twice the distance of the centres, along the sides. */
    private static long gap(Placed a, Placed b) {
        return Math.abs((long) a.x() + a.right() - b.x() - b.right())
            + Math.abs((long) a.y() + a.top() - b.y() - b.top());
    }

    private void sortPool() {
        for (int i = pool.size() - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            Blank swap = pool.get(i);
            pool.set(i, pool.get(j));
            pool.set(j, swap);
        }
        int order = random.nextInt(ORDERS.size() + 2);
        if (order <= ORDERS.size()) {
            pool.sort(ORDERS.get(order % ORDERS.size()));
        }
    }

    private void refill() {
        FitRule rule = random.nextInt(4) == 0 ? FitRule.AREA : FitRule.SHORT_SIDE;
        List<Blank> left = new ArrayList<>();
        for (Blank blank : pool) {
            spot.reset();
            for (int i = 0; i < sheets.length; i++) {
                long before = spot.score;
                sheets[i].offer(blank, rule, random, spot);
                spot.sheet = spot.score < before ? i : spot.sheet;
            }
            if (spot.found()) {
                touch(spot.sheet);
                sheets[spot.sheet].place(blank, spot);
            } else {
                left.add(blank);
            }
        }
        pool = left;
    }

    /** Keeps the sheet as it was before this step, once. */
    private void touch(int sheet) {
        if (saved[sheet] == null) {
            saved[sheet] = sheets[sheet];
            sheets[sheet] = sheets[sheet].copy();
        }
    }

    private static long area(List<Blank> blanks) {
        long sum = 0;
        for (Blank blank : blanks) {
            sum += blank.area();
        }
        return sum;
    }
}
