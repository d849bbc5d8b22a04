package unthrum.cutting;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * Asks a constraint solver with a native library whether blanks fit onto so many equal sheets with free cuts, or how
 * short a roll they need. Only this class loads it, once a search is stuck above its bound. One worker, a fixed seed
 * and a budget in the solver's own deterministic units give the same answer on every computer.
 */
final class ExactFit {

    /** How often a running solver asks whether it should stop, ms. */
    private static final int POLL = 50;
    /** The share of the budget for a proof without places. */
    private static final double FIRST = 0.2;

    /**
     * The answer: a layout, which for a roll may not be the shortest unless settled; or settled, none; or not known
     * within the budget.
     *
     * @param settled whether nothing is left to find
     * @param layout  of every sheet what lies on it; empty unless it fits
     */
    record Answer(boolean settled, List<List<Placed>> layout) {

        static final Answer UNKNOWN = new Answer(false, List.of());

        boolean fits() {
            return !layout.isEmpty();
        }

        boolean impossible() {
            return settled && layout.isEmpty();
        }
    }

    private ExactFit() {
    }

    /** Loads the native library; false where there is none for this kind of computer. */
    private static boolean available() {
        try {
            Loader.loadNativeLibraries();
            return true;
        } catch (RuntimeException | UnsatisfiedLinkError none) {
            return false;
        }
    }

    /**
     * Whether they fit.
     *
     * @param width  of a sheet, margin included; so the height
     * @param budget in the solver's deterministic units, about a second each
     * @param stop   asked now and then, by another thread
     */
    static Answer ask(List<Blank> blanks, int width, int height, int sheets, double budget, BooleanSupplier stop) {
        return available() ? answer(new FitModel(Raised.all(blanks, width, height), width, height, sheets), budget, stop)
            : Answer.UNKNOWN;
    }

    /** The shortest layout on a roll of that width that is no longer than the height. */
    static Answer askShortest(List<Blank> blanks, int width, int height, double budget, BooleanSupplier stop) {
        if (!available()) {
            return Answer.UNKNOWN;
        }
        FitModel model = new FitModel(Raised.across(blanks, width, height), width, height, 1);
        model.addPlaces();
        model.seekLeastHeight();
        CpSolver solver = solver(budget);
        return answer(solve(solver, model, stop), solver, model);
    }

    /** First without places, which proves much in little time, then with them. */
    private static Answer answer(FitModel model, double budget, BooleanSupplier stop) {
        CpSolver solver = solver(FIRST * budget);
        CpSolverStatus status = solve(solver, model, stop);
        if (status == CpSolverStatus.INFEASIBLE) {
            return answer(status, solver, model);
        }
        if (stop.getAsBoolean()) {
            return Answer.UNKNOWN;
        }
        model.addPlaces();
        solver = solver(budget - solver.response().getDeterministicTime());
        return answer(solve(solver, model, stop), solver, model);
    }

    private static Answer answer(CpSolverStatus status, CpSolver solver, FitModel model) {
        return switch (status) {
            case OPTIMAL -> new Answer(true, model.read(solver));
            case FEASIBLE -> new Answer(false, model.read(solver));
            case INFEASIBLE -> new Answer(true, List.of());
            case UNKNOWN -> Answer.UNKNOWN;
            default -> throw new IllegalStateException("the model of the fit is invalid: " + model.get().validate());
        };
    }

    /** Ctrl-C is ours: the solver's own answer to it ends the process. */
    private static CpSolver solver(double budget) {
        CpSolver solver = new CpSolver();
        solver.getParameters().setCatchSigintSignal(false).setNumWorkers(1).setRandomSeed(1)
            .setMaxDeterministicTime(budget)
            .setUseEnergeticReasoningInNoOverlap2D(true).setUseAreaEnergeticReasoningInNoOverlap2D(true);
        return solver;
    }

    private static CpSolverStatus solve(CpSolver solver, FitModel model, BooleanSupplier stop) {
        Thread guard = new Thread(() -> {
            try {
                while (true) {
                    Thread.sleep(POLL);
                    if (stop.getAsBoolean()) {
                        solver.stopSearch();
                    }
                }
            } catch (InterruptedException done) {
                Thread.currentThread().interrupt();
            }
        }, "cutting-guard");
        guard.setDaemon(true);
        guard.start();
        try {
            return solver.solve(model.get());
        } finally {
            guard.interrupt();
        }
    }
}
