package unthrum.plan;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExprBuilder;

/**
 * Shares exactly, by a constraint solver with a native library. This class and its model are the only ones that touch
 * it, so a plan that needs no sharing never loads it.
 *
 * <p>The aims stand strictly one after the other: least beyond the limits (only safety may go beyond), most served,
 * least money, least mass, fewest different materials. Each is sought, then held while the next is sought. One worker,
 * a fixed seed and a budget in the solver's own deterministic units give the same plan on every computer.
 */
final class ExactSharing {

    /** The solver's deterministic units for all aims together, about a second each. */
    private static final double BUDGET = 10;

    private final SharingModel model;
    private Allotment best;
    private double spent;
    private boolean proved = true;

    private ExactSharing(SharingProblem problem, Allotment start) {
        this.model = new SharingModel(problem, start);
        this.best = start;
    }

    /**
     * @param proved whether every aim is proved
     * @param bound  what no allotment could exceed in worth
     */
    record Solved(Allotment allotment, boolean proved, long bound) {
    }

    /** @throws UnsatisfiedLinkError where there is no solver for this kind of computer */
    static Solved solve(SharingProblem problem, Allotment start) {
        Loader.loadNativeLibraries();
        return new ExactSharing(problem, start).solve();
    }

    private Solved solve() {
        seek(model.excess());
        long bound = -seek(model.worth());
        seek(model.money());
        seek(model.mass());
        seek(model.materials());
        return new Solved(best, proved, bound);
    }

    /** Seeks the least of a goal from the best found so far and holds it; the bound on it. */
    private long seek(LinearExprBuilder goal) {
        model.get().minimize(goal);
        model.hint(best);
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1).setRandomSeed(1).setLinearizationLevel(2)
                .setMaxDeterministicTime(Math.max(BUDGET - spent, 0.1));
        CpSolverStatus status = solver.solve(model.get());
        if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
            throw new IllegalStateException("sharing ended as " + status + " although a plan was at hand");
        }
        proved &= status == CpSolverStatus.OPTIMAL;
        spent += solver.response().getDeterministicTime();
        best = model.read(solver);
        model.get().clearObjective();
        model.get().addLessOrEqual(goal, Math.round(solver.objectiveValue()));
        return Math.round(solver.bestObjectiveBound());
    }
}
