package unthrum.cutting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Ruin and recreate on a fixed set of sheets with a pool of blanks that do not fit yet: empties parts of a few sheets,
 * then fills up from the pool, and keeps what leaves less in the pool, or little more. The goal is an empty pool.
 * Ruin and recreate: Schrimpf et al., J. Comput. Phys. 159 (2000); goal-driven: Gardeyn and Wauters, EJOR 301 (2022);
 * blinks: Christiaens and Vanden Berghe, Transportation Science 54 (2020); acceptance: simulated annealing, Kirkpatrick
 * et al., Science 220 (1983), cooling over a fixed number of steps and then warm again, so it never settles for good.
 * The constants here, in {@link Ruin} and in {@link Recreate} are as tuned on the published bin classes.
 */
final class Refill {

    /** Steps from warm to cold. */
    private static final int COOLING = 6_000;
    /** Warm and cold, in mean areas of a blank: about so much more may be left in the pool. */
    private static final double WARM = 0.1;
    private static final double COLD = 0.002;
    /** So much of what a gap would cover of a left-over blank counts as placed: what nearly fits is nearly done. */
    private static final double NEARLY = 0.35;
    /** The smallest gap is sought in one round of so many, else the best side. */
    private static final int BY_AREA_ONE_IN = 4;
    /** Of so many rounds most sort by area, some otherwise and one not at all. */
    private static final int ROUNDS = 6;
    private static final List<Comparator<Blank>> ORDERS = List.of(
        Comparator.comparingInt((Blank b) -> Math.max(b.width(), b.height())).reversed(),
        Comparator.comparingInt(Blank::width).reversed(),
        Comparator.comparingInt(Blank::height).reversed());
    private static final Comparator<Blank> BY_AREA = Comparator.comparingLong(Blank::area).reversed();

    private final Sheets sheets;
    private final Ruin ruin;
    private final Recreate recreate;
    private List<Blank> pool;
    private double wanting;
    private final double meanArea;
    private long steps;
    private final SplittableRandom random;

    Refill(List<SheetSpace> spaces, List<Blank> pool, SplittableRandom random) {
        this.sheets = new Sheets(spaces);
        this.ruin = new Ruin(sheets, random);
        this.recreate = new Recreate(sheets, random);
        this.pool = new ArrayList<>(pool);
        this.wanting = wanting(pool);
        this.random = random;
        List<Blank> all = new ArrayList<>(pool);
        spaces.forEach(space -> space.placed().forEach(p -> all.add(p.blank())));
        this.meanArea = all.stream().mapToLong(Blank::area).average().orElse(0);
    }

    boolean done() {
        return pool.isEmpty();
    }

    List<SheetSpace> sheets() {
        return sheets.copies();
    }

    /** One round of ruin and recreate. */
    void step() {
        sheets.beginRound();
        List<Blank> waiting = new ArrayList<>(pool);
        waiting.addAll(ruin.round(pool));
        sort(waiting);
        double most = wanting + allowance();
        FitRule rule = random.nextInt(BY_AREA_ONE_IN) == 0 ? FitRule.AREA : FitRule.SHORT_SIDE;
        List<Blank> left = recreate.round(waiting, rule, most / (1 - NEARLY));
        double now = left == null ? Double.POSITIVE_INFINITY : wanting(left);
        if (now <= most) {
            pool = left;
            wanting = now;
        } else {
            sheets.undo();
        }
        steps++;
    }

    /** How much more may be left in the pool this time; strict mathematics, so that it is the same on every machine. */
    private double allowance() {
        double temperature = meanArea * WARM * StrictMath.pow(COLD / WARM, (double) (steps % COOLING) / COOLING);
        return -temperature * StrictMath.log(1 - random.nextDouble());
    }

    private void sort(List<Blank> waiting) {
        for (int i = waiting.size() - 1; i > 0; i--) {
            Collections.swap(waiting, i, random.nextInt(i + 1));
        }
        int order = random.nextInt(ROUNDS);
        if (order > 0) {
            waiting.sort(order <= ORDERS.size() ? ORDERS.get(order - 1) : BY_AREA);
        }
    }

    /** The area left over, less a share of what the gaps would cover of it. */
    private double wanting(List<Blank> left) {
        double sum = 0;
        for (Blank blank : left) {
            long covered = 0;
            for (int i = 0; i < sheets.count(); i++) {
                covered = Math.max(covered, sheets.get(i).covers(blank));
            }
            sum += blank.area() - NEARLY * covered;
        }
        return sum;
    }
}
