package unthrum.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;

/**
 * Fewest sheets, then the least sheet area, then the largest usable offcut (of a roll: the least length), from the best
 * greedy start by goals that are each a little better than the best layout so far. The goals take turns, so that none
 * starves, and none depends on the budget.
 */
final class SheetSearch {

    private static final int LONG_TURN = 8000;
    private static final int SHORT_TURN = 300;
    /** With the fewest sheets proved, so many steps without a larger offcut end the search. */
    private static final int PATIENCE = 6000;
    /** The first try at a tighter sheet saves one part in so many; each failure halves it. */
    private static final int FIRST_SHARE = 16;

    private final CuttingTask task;
    private final List<Blank> blanks;
    private final Watch watch;
    private final SplittableRandom random;
    private final UnaryOperator<Filling> inHand;
    private final Prover prover;
    /** The best layout, which sets the goals. */
    private Filling best;
    /** The best of what the stock in hand allows of each layout found. */
    private Filling bestInHand;
    private List<Goal> fewer = List.of();
    private List<Goal> tighter = List.of();
    private int share = FIRST_SHARE;
    private long lastBetter;

    SheetSearch(CuttingTask task, List<Blank> blanks, Watch watch, SplittableRandom random,
                UnaryOperator<Filling> inHand) {
        this.task = task;
        this.blanks = blanks;
        this.watch = watch;
        this.random = random;
        this.inHand = inHand;
        this.prover = new Prover(task, blanks, watch);
    }

    Filling run() {
        for (int way = 0; way < Opening.ways() && (way == 0 || watch.step()); way++) {
            offer(Opening.way(task, blanks, way, random));
        }
        while (!finished()) {
            boolean reached = pursue(fewer, LONG_TURN) || pursue(tighter, task.fromRoll() ? LONG_TURN : SHORT_TURN);
            if (prover.isDue(best)) {
                consult();
            }
            if (!reached && share < Lengths.LONGEST) {
                share *= 2;
                tighter = tighterGoals();
            }
        }
        return bestInHand;
    }

    /** Asks whether a sheet fewer, or a shorter roll, can do; if not, the bound is raised. */
    private void consult() {
        List<List<Placed>> layout = prover.ask(best);
        if (!layout.isEmpty()) {
            offer(Filling.of(task, Collections.nCopies(layout.size(), best.stock().get(0)),
                layout.stream().map(this::space).toList(), List.of()));
        }
        fewer = best.cost() > watch.bound() ? fewer : List.of();
    }

    private SheetSpace space(List<Placed> placed) {
        int margin = task.knifeMargin();
        Stock sheet = best.stock().get(0);
        return FreeSpace.of(sheet.width() + margin, sheet.height() + margin, placed);
    }

    private boolean finished() {
        boolean least = best.pool().isEmpty() && best.cost() <= watch.bound();
        boolean settled = task.fromRoll() || watch.steps() - lastBetter > PATIENCE;
        boolean exhausted = tighter.isEmpty() && share >= Lengths.LONGEST;
        return watch.over() || fewer.isEmpty() && (least && settled || exhausted);
    }

    private boolean pursue(List<Goal> goals, int turn) {
        for (Goal goal : goals) {
            Filling reached = goal.pursue(turn, watch);
            if (reached != null) {
                if (!offer(reached)) {
                    throw new IllegalStateException("a goal reached was no better than the best layout");
                }
                return true;
            }
        }
        return false;
    }

    /** Takes the filling if it is the best so far, and sets new goals; the long-term ones stay while they hold. */
    private boolean offer(Filling filling) {
        Filling allowed = inHand.apply(filling);
        if (bestInHand == null || allowed.betterThan(bestInHand)) {
            bestInHand = allowed;
        }
        if (best != null && !filling.betterThan(best)) {
            return false;
        }
        boolean sameStock = best != null && Arrays.equals(best.rank(), 0, 3, filling.rank(), 0, 3);
        best = filling;
        lastBetter = watch.steps();
        watch.found(best.cost());
        if (!sameStock) {
            fewer = fewerGoals();
        }
        tighter = tighterGoals();
        return true;
    }

    private List<Goal> fewerGoals() {
        if (!best.pool().isEmpty()) {
            return List.of(Goal.placeAll(best, random));
        }
        List<Goal> goals = new ArrayList<>();
        int emptiest = emptiest();
        if (task.fromRoll() || emptiest < 0) {
            return goals;
        }
        if (best.cost() > watch.bound()) {
            goals.add(Goal.without(best, emptiest, random));
        }
        Stock large = best.stock().get(emptiest);
        task.stock().stream().filter(s -> s.kind() == Stock.Kind.SHEET && s.area() < large.area() && !usedUp(s))
            .forEach(s -> goals.add(Goal.smaller(best, emptiest, s, random)));
        return goals;
    }

    private boolean usedUp(Stock stock) {
        return best.stock().stream().filter(stock::equals).count() >= stock.count();
    }

    /** The whole sheet (or the roll) with the least on it; -1 if only offcuts are used. */
    private int emptiest() {
        int emptiest = -1;
        long most = -1;
        for (int i = 0; i < best.stock().size(); i++) {
            long free = best.spaces().get(i).freeArea();
            if (best.stock().get(i).kind() != Stock.Kind.OFFCUT && free > most) {
                emptiest = i;
                most = free;
            }
        }
        return emptiest;
    }

    /** To free a larger band above, or beside, all pieces of the emptiest sheet. */
    private List<Goal> tighterGoals() {
        int sheet = emptiest();
        if (!best.pool().isEmpty() || sheet < 0 || !best.stock().get(sheet).defects().isEmpty()) {
            return List.of();
        }
        SheetSpace space = best.spaces().get(sheet);
        long offcut = best.largestOffcut();
        List<Goal> goals = new ArrayList<>();
        int margin = task.knifeMargin();
        int height = target(task.fromRoll() ? Filling.used(space, false)
            : space.height - margin - (int) (offcut / (space.width - margin)));
        int width = target(space.width - margin - (int) (offcut / (space.height - margin)));
        if (height > 0 && roomLeft((long) (space.height - height) * space.width)) {
            goals.add(Goal.tighter(best, sheet, space.width, height, random));
        }
        if (!task.fromRoll() && width > 0 && roomLeft((long) (space.width - width) * space.height)) {
            goals.add(Goal.tighter(best, sheet, width, space.height, random));
        }
        return goals;
    }

    private int target(int length) {
        return length - Math.max(1, length / share);
    }

    private boolean roomLeft(long lost) {
        return best.spaces().stream().mapToLong(SheetSpace::freeArea).sum() >= lost;
    }
}
