package unthrum.plan;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.LinearExprBuilder;
import java.time.Duration;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.ToLongFunction;

/**
 * Shares exactly, by a constraint solver with a native library. This class is the only way to it, so a plan that needs
 * no sharing never loads it.
 *
 * <p>The aims stand strictly one after the other: least beyond the limits (only safety may go beyond); most served,
 * less what its mass and money would have to bring; then, with no more packs and no panel gaining less or bearing more,
 * the thinnest stacks, most from the shelf and fewest different materials. Each is sought, then held while the next is
 * sought. One worker, a fixed seed and a budget in the solver's own deterministic units give the same plan on every
 * computer, unless the patience sets a time.
 */
final class ExactSharing {

    /** The solver's deterministic units for all aims together, about a second each. */
    private static final double BUDGET = 10;

    private final SharingProblem problem;
    private final SharingModel model;
    private Allotment best;
    private double budget;
    private final BooleanSupplier isOver;
    private boolean proved = true;
    private List<PackSearch.Box> boxes;

    private ExactSharing(SharingProblem problem, Allotment start, Patience patience) {
        this.budget = patience.time().isPresent() ? Double.POSITIVE_INFINITY : BUDGET;
        this.isOver = isOver(patience);
        this.problem = problem;
        this.model = new SharingModel(problem, start);
        this.best = start;
        this.boxes = List.of(PackSearch.Box.all(model));
    }

    /**
     * @param proved whether every aim is proved
     * @param bound  what no allotment could exceed in worth
     */
    record Solved(Allotment allotment, boolean proved, long bound) {
    }

    /** Loads the native library; false where there is none for this kind of computer. */
    static boolean isAvailable() {
        try {
            Loader.loadNativeLibraries();
            return true;
        } catch (RuntimeException | UnsatisfiedLinkError none) {
            return false;
        }
    }

    /** @param tell more than the best found is not sought unless it is more by so much */
    static Solved solve(SharingProblem problem, Allotment start, Patience patience, long tell) {
        return new ExactSharing(problem, start, patience).solve(tell);
    }

    /** The time runs from here on. */
    private static BooleanSupplier isOver(Patience patience) {
        long end = System.nanoTime() + patience.time().orElse(Duration.ZERO).toNanos();
        return () -> patience.cancelled().getAsBoolean() || patience.time().isPresent() && System.nanoTime() > end;
    }

    private Solved solve(long tell) {
        if (best.isOverTheBounds()) {
            seek(model.excess(), a -> a.excess().money() + a.excess().mass() + a.excess().roof(), 1);
        }
        long bound = -seek(model.net(), a -> -a.net(), tell);
        best = Greedy.filled(problem, best);
        model.holdPacks(best);
        model.holdPanels(best);
        seek(model.thickness(), Allotment::thickness, 1);
        seek(model.fresh(), Allotment::fresh, 1);
        seek(model.materials(), Allotment::materials, 1);
        return new Solved(best, proved, bound);
    }

    /** Seeks the least of a goal from the best found so far and holds it; what no allotment can go below. */
    private long seek(LinearExprBuilder goal, ToLongFunction<Allotment> measure, long tell) {
        if (isOver.getAsBoolean()) {
            proved = false;
            return -SharingProblem.FREE;
        }
        model.get().minimize(goal);
        model.hint(best);
        PackSearch.Found found = new PackSearch(model, goal, best, measure.applyAsLong(best), tell, budget,
                isOver)
                .search(boxes);
        boxes = found.boxes();
        if (boxes.isEmpty()) {
            throw new IllegalStateException("no place is left for the plan at hand");
        }
        best = found.best();
        budget = found.left();
        boolean told = found.bound() > found.reached() - tell;
        proved &= told;
        model.get().clearObjective();
        model.get().addLessOrEqual(goal, found.reached());
        return (told ? found.reached() : found.bound()) - tell + 1;
    }

    /**
     * One worker, a fixed seed, and the relaxation in full; probing costs more than it brings at this size. Ctrl-C is
     * ours: the solver's own answer to it ends the process.
     */
    static CpSolver solver(double budget) {
        CpSolver solver = new CpSolver();
        solver.getParameters().setCatchSigintSignal(false).setNumWorkers(1).setRandomSeed(1)
                .setLinearizationLevel(2).setCpModelProbingLevel(0).setMaxDeterministicTime(budget);
        return solver;
    }
}
