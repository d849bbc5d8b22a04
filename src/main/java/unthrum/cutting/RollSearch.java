package unthrum.cutting;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Least length of a roll with free cuts: late acceptance hill climbing (Burke and Bykov, EJOR 258, 2017) over the order
 * in which the {@link Skyline} takes the blanks.
 */
final class RollSearch {

    private static final int MEMORY = 100;
    /** Changes made to a sorted order before a climb. */
    private static final int STIRS = 5;
    /** A climb ends after so many steps without gain. */
    private static final int PATIENCE = 10_000;
    private static final List<Comparator<Blank>> ORDERS = List.of(
        Comparator.comparingLong(Blank::area),
        Comparator.comparingInt(Blank::width),
        Comparator.comparingInt(Blank::height),
        Comparator.comparingInt((Blank b) -> b.width() + b.height()));

    private final CuttingTask task;
    private final List<Blank> blanks;
    private final Watch watch;
    private final SplittableRandom random;
    private final int width;
    private final Skyline skyline;
    private final Prover prover;
    private Filling best;

    RollSearch(CuttingTask task, List<Blank> blanks, Watch watch, SplittableRandom random) {
        this.task = task;
        this.blanks = blanks;
        this.watch = watch;
        this.random = random;
        this.width = task.stock().get(0).width() + task.knifeMargin();
        this.skyline = new Skyline(width, blanks);
        this.prover = new Prover(task, blanks, watch);
    }

    Filling run() {
        for (int way = 0; way < ORDERS.size(); way++) {
            evaluate(sorted(way));
        }
        while (best.cost() > watch.bound() && !watch.over()) {
            climb();
            if (prover.isDue(best)) {
                consult();
            }
        }
        return best;
    }

    /** Asks whether a shorter roll can do; if not, the bound is raised. */
    private void consult() {
        List<List<Placed>> layout = prover.ask(best);
        if (!layout.isEmpty()) {
            keep(layout.get(0));
        }
    }

    /** One climb from a disturbed start, until it gets no further or the prover is due. */
    private void climb() {
        int[] order = sorted(random.nextInt(ORDERS.size()));
        for (int i = 0; i < STIRS; i++) {
            change(order);
        }
        long cost = evaluate(order);
        long least = cost;
        long[] memory = new long[MEMORY];
        Arrays.fill(memory, cost);
        int idle = 0;
        for (int turn = 0; idle < PATIENCE && isOpen() && watch.step(); turn = (turn + 1) % MEMORY) {
            int[] changed = order.clone();
            change(changed);
            long newCost = evaluate(changed);
            if (newCost <= cost || newCost <= memory[turn]) {
                order = changed;
                cost = newCost;
            }
            memory[turn] = Math.min(memory[turn], cost);
            idle = cost < least ? 0 : idle + 1;
            least = Math.min(least, cost);
        }
    }

    private boolean isOpen() {
        return best.cost() > watch.bound() && !prover.isDue(best);
    }

    private int[] sorted(int way) {
        return IntStream.range(0, blanks.size()).boxed()
            .sorted(Comparator.comparing(blanks::get, ORDERS.get(way).reversed()))
            .mapToInt(i -> 2 * i).toArray();
    }

    /** Swaps two, or moves one, or has one rather turned than not. */
    private void change(int[] order) {
        int from = random.nextInt(order.length);
        int to = random.nextInt(order.length);
        int moved = order[from];
        int how = random.nextInt(5);
        if (how == 0) {
            order[from] ^= 1;
            return;
        }
        if (how < 3) {
            order[from] = order[to];
        } else if (from < to) {
            System.arraycopy(order, from + 1, order, from, to - from);
        } else {
            System.arraycopy(order, to, order, to + 1, from - to);
        }
        order[to] = moved;
    }

    private long evaluate(int[] order) {
        long cost = skyline.fill(order);
        if (best == null || skyline.length() - task.knifeMargin() < best.cost()) {
            keep(skyline.placed());
        }
        return cost;
    }

    private void keep(List<Placed> placed) {
        int height = task.stock().get(0).height() + task.knifeMargin();
        best = Filling.of(task, task.stock(), List.of(FreeSpace.of(width, height, placed)),
            List.of());
        watch.found(best.cost());
    }
}
