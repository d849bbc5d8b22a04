package unthrum.cutting;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * Asks a constraint solver with a native library whether blanks fit onto so many equal sheets with free cuts. Only
 * this class loads it, once a search is stuck above its bound. One worker, a fixed seed and a budget in the solver's
 * own deterministic units give the same answer on every computer.
 */
final class ExactFit {

    /** How often a running solver asks whether it should stop, ms. */
    private static final int POLL = 50;
    /** The share of the budget for a proof without places. */
    private static final double FIRST = 0.2;

    /**
     * The answer: it fits, and so; or it cannot; or not known within the budget.
     *
     * @param layout of every sheet what lies on it; empty unless it fits
     */
    record Answer(boolean fits, boolean impossible, List<List<Placed>> layout) {

        static final Answer UNKNOWN = new Answer(false, false, List.of());
        static final Answer NO = new Answer(false, true, List.of());
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
     * @param width  of a sheet, margin included; so the height
     * @param budget in the solver's deterministic units, about a second each
     * @param stop   asked now and then, by another thread
     */
    static Answer ask(List<Blank> blanks, int width, int height, int sheets, double budget, BooleanSupplier stop) {
        if (!available()) {
            return Answer.UNKNOWN;
        }
        FitModel model = new FitModel(Raised.all(blanks, width, height), width, height, sheets);
        CpSolver solver = solver(FIRST * budget);
        CpSolverStatus status = solve(solver, model, stop);
        if (status != CpSolverStatus.INFEASIBLE && !stop.getAsBoolean()) {
            model.addPlaces();
            solver = solver(budget - solver.response().getDeterministicTime());
            status = solve(solver, model, stop);
            if (status == CpSolverStatus.OPTIMAL) {
                return new Answer(true, false, model.read(solver));
            }
        }
        return status == CpSolverStatus.INFEASIBLE ? Answer.NO : Answer.UNKNOWN;
    }

    private static CpSolver solver(double budget) {
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1).setRandomSeed(1).setMaxDeterministicTime(budget)
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
