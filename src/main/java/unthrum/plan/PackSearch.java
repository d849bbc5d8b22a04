package unthrum.plan;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.Comparator;
import java.util.OptionalDouble;
import java.util.PriorityQueue;

/**
 * Branch and bound over the numbers of packs. With half packs allowed the bound is far off, but once the packs are whole
 * the rest is easy. So the packs are split first, always where the relaxed plan promises most; where its packs come out
 * whole the constraint solver settles the rest exactly.
 */
final class PackSearch {

    /** What a relaxed plan costs of the budget, in the solver's deterministic units. */
    private static final double NODE = 0.01;

    /** What the solver may spend on one combination of packs. */
    private static final double LEAF = 1;

    /** Below this a number of packs or a goal is whole: far above the error of the relaxation, far below one. */
    private static final double WHOLE = 1e-3;

    private final SharingModel model;
    private final LinearExprBuilder goal;
    private final Relaxation relaxation;
    private final PriorityQueue<Node> open = new PriorityQueue<>(
            Comparator.comparingLong(Node::bound).thenComparing(Node::number, Comparator.reverseOrder()));
    private double budget;
    private int nodes;
    private long reached;
    private Allotment best;
    private long unsettled = Long.MAX_VALUE;

    /** @param goal that the model minimises */
    PackSearch(SharingModel model, LinearExprBuilder goal, Allotment best, long reached, double budget) {
        this.model = model;
        this.goal = goal;
        this.relaxation = new Relaxation(model.get().model());
        this.best = best;
        this.reached = reached;
        this.budget = budget;
    }

    /** Numbers of packs from and to, and what the goal cannot fall below there. */
    private record Node(long[] from, long[] to, long bound, int number) {
    }

    /** @param bound what the goal cannot fall below; as much as was reached when that is proved best */
    record Found(Allotment best, long reached, long bound, double left) {
    }

    Found search(long bound) {
        long[] most = model.mostPacks();
        open.add(new Node(new long[most.length], most, bound, 0));
        while (!open.isEmpty() && open.peek().bound() < reached && budget > 0) {
            visit(open.poll());
        }
        long rest = open.isEmpty() ? reached : open.peek().bound();
        return new Found(best, reached, Math.min(reached, Math.min(rest, unsettled)), budget);
    }

    private void visit(Node node) {
        budget -= NODE;
        for (int g = 0; g < node.from().length; g++) {
            relaxation.bound(model.packIndex(g), node.from()[g], node.to()[g]);
        }
        OptionalDouble least = relaxation.least();
        if (least.isEmpty() || least.getAsDouble() > reached - 1 + WHOLE) {
            return;
        }
        long bound = Math.max(node.bound(), (long) Math.ceil(least.getAsDouble() - WHOLE));
        int split = mostBroken(node);
        if (split >= 0) {
            split(node, split, (long) Math.floor(relaxation.value(model.packIndex(split))), bound);
        } else if (!settle(node)) {
            splitWhole(node, bound);
        }
    }

    /** The dearest fraction of a pack; -1 when all are whole. */
    private int mostBroken(Node node) {
        int most = -1;
        double worst = WHOLE;
        for (int g = 0; g < node.from().length; g++) {
            double packs = relaxation.value(model.packIndex(g));
            double broken = Math.abs(packs - Math.rint(packs)) * model.packPrice(g);
            if (broken > worst) {
                worst = broken;
                most = g;
            }
        }
        return most;
    }

    private void split(Node node, int at, long below, long bound) {
        long[] to = node.to().clone();
        to[at] = below;
        open.add(new Node(node.from(), to, bound, ++nodes));
        long[] from = node.from().clone();
        from[at] = below + 1;
        open.add(new Node(from, node.to(), bound, ++nodes));
    }

    /** Splits where the packs are still open; with none left the solver's budget was too small to settle it. */
    private void splitWhole(Node node, long bound) {
        for (int g = 0; g < node.from().length; g++) {
            if (node.from()[g] < node.to()[g]) {
                long packs = Math.round(relaxation.value(model.packIndex(g)));
                split(node, g, Math.min(packs, node.to()[g] - 1), bound);
                return;
            }
        }
        unsettled = Math.min(unsettled, bound);
    }

    /** Seeks the best plan with these packs that beats the one at hand; whether that is settled. */
    private boolean settle(Node node) {
        CpModel only = model.get().getClone();
        for (int g = 0; g < node.from().length; g++) {
            only.addLinearConstraint(only.getIntVarFromProtoIndex(model.packIndex(g)), node.from()[g], node.to()[g]);
        }
        only.addLessOrEqual(goal, reached - 1);
        CpSolver solver = ExactSharing.solver(LEAF);
        CpSolverStatus status = solver.solve(only);
        budget -= solver.response().getDeterministicTime();
        if (status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE) {
            best = model.read(solver);
            reached = Math.round(solver.objectiveValue());
        }
        return status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.INFEASIBLE;
    }
}
