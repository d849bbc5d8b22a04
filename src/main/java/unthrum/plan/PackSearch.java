package unthrum.plan;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpObjectiveProto;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExprBuilder;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;

/**
 * Branch and bound over the numbers of packs. With half packs allowed the bound is far off, but once the packs are
 * whole the rest is easy. So the packs are split first, always where the relaxed plan promises most; where its packs
 * come out whole the constraint solver settles the rest exactly.
 */
final class PackSearch {

    /** What a relaxed plan costs of the budget, in the solver's deterministic units. */
    private static final double NODE = 0.01;

    /** What the solver may spend on one combination of packs. */
    private static final double LEAF = 2;

    /** Below this a number of packs or a goal is whole: far above the error of the relaxation, far below one. */
    private static final double WHOLE = 1e-3;

    /** Below any goal. */
    private static final long UNKNOWN = -SharingProblem.FREE;

    private final SharingModel model;
    private final LinearExprBuilder goal;
    private final Relaxation relaxation;
    private final PriorityQueue<Node> open = new PriorityQueue<>(
            Comparator.comparingLong(Node::bound).thenComparing(Node::number, Comparator.reverseOrder()));
    private final List<Node> asGood = new ArrayList<>();
    private final long tell;
    private final BooleanSupplier isOver;
    private double budget;
    private int nodes;
    private long reached;
    private Allotment best;
    private long unsettled = Long.MAX_VALUE;

    /**
     * @param goal   that the model minimises
     * @param tell   a better goal is not sought that is better by less
     * @param isOver asked after each step, whether to end with what is found
     */
    PackSearch(SharingModel model, LinearExprBuilder goal, Allotment best, long reached, long tell, double budget,
               BooleanSupplier isOver) {
        this.model = model;
        this.goal = goal;
        this.relaxation = new Relaxation(model.get().model());
        this.tell = Math.max(step(model.get().model().getObjective()), tell);
        this.best = best;
        this.reached = reached;
        this.budget = budget;
        this.isOver = isOver;
    }

    /** The least by which two values of a goal can differ: the greatest common divisor of its factors. */
    private static long step(CpObjectiveProto goal) {
        return goal.getCoeffsList().stream().map(BigInteger::valueOf).reduce(BigInteger.ZERO, BigInteger::gcd)
                .max(BigInteger.ONE).longValueExact();
    }

    /** Where to look, and what the goal cannot fall below there. */
    private record Node(Box box, long bound, int number) {
    }

    /** Numbers of packs from and to. */
    record Box(long[] from, long[] to) {

        static Box all(SharingModel model) {
            long[] most = model.mostPacks();
            return new Box(new long[most.length], most);
        }

        private Box upTo(int goods, long packs) {
            long[] less = to.clone();
            less[goods] = packs;
            return new Box(from, less);
        }

        private Box above(int goods, long packs) {
            long[] more = from.clone();
            more[goods] = packs + 1;
            return new Box(more, to);
        }
    }

    /**
     * @param bound no plan is better than this by what is told apart; as much as was reached when that is proved best
     * @param boxes all that may hold a plan as good as the best; the next aim need not look elsewhere
     */
    record Found(Allotment best, long reached, long bound, double left, List<Box> boxes) {
    }

    Found search(List<Box> boxes) {
        boxes.forEach(box -> open.add(new Node(box, UNKNOWN, nodes++)));
        do {
            visit(open.poll());
        } while (!open.isEmpty() && open.peek().bound() <= reached - tell && budget > 0
                && !isOver.getAsBoolean());
        long rest = open.isEmpty() ? reached : open.peek().bound();
        asGood.addAll(open);
        return new Found(best, reached, Math.min(reached, Math.min(rest, unsettled)), budget,
                asGood.stream().filter(n -> n.bound() <= reached).map(Node::box).toList());
    }

    private void visit(Node node) {
        budget -= NODE;
        for (int g = 0; g < node.box().from().length; g++) {
            relaxation.bound(model.packIndex(g), node.box().from()[g], node.box().to()[g]);
        }
        OptionalDouble least = relaxation.least();
        if (least.isEmpty()) {
            return;
        }
        long bound = Math.max(node.bound(), ceil(least.getAsDouble()));
        Node here = new Node(node.box(), bound, node.number());
        int split = mostBroken(here);
        if (least.getAsDouble() > reached - tell + WHOLE) {
            asGood.add(here);
        } else if (split >= 0) {
            split(here, split, (long) Math.floor(relaxation.value(model.packIndex(split))));
        } else if (settle(here)) {
            asGood.add(here);
        } else {
            splitWhole(here);
        }
    }

    /** A relaxation that came to no end bounds nothing. */
    private static long ceil(double least) {
        return least == Double.NEGATIVE_INFINITY ? UNKNOWN : (long) Math.ceil(least - WHOLE);
    }

    /** The dearest fraction of a pack; -1 when all are whole. */
    private int mostBroken(Node node) {
        int most = -1;
        double worst = WHOLE;
        for (int g = 0; g < node.box().from().length; g++) {
            double packs = relaxation.value(model.packIndex(g));
            double broken = Math.abs(packs - Math.rint(packs)) * model.packPrice(g);
            if (broken > worst) {
                worst = broken;
                most = g;
            }
        }
        return most;
    }

    private void split(Node node, int at, long below) {
        open.add(new Node(node.box().upTo(at, below), node.bound(), nodes++));
        open.add(new Node(node.box().above(at, below), node.bound(), nodes++));
    }

    /** Splits where the packs are still open; with none left the solver's budget was too small to settle it. */
    private void splitWhole(Node node) {
        for (int g = 0; g < node.box().from().length; g++) {
            if (node.box().from()[g] < node.box().to()[g]) {
                long packs = Math.round(relaxation.value(model.packIndex(g)));
                split(node, g, Math.min(packs, node.box().to()[g] - 1));
                return;
            }
        }
        unsettled = Math.min(unsettled, node.bound());
        asGood.add(node);
    }

    /** Seeks the best plan with these packs that beats the one at hand; whether that is settled. */
    private boolean settle(Node node) {
        CpModel only = model.get().getClone();
        for (int g = 0; g < node.box().from().length; g++) {
            only.addLinearConstraint(only.getIntVarFromProtoIndex(model.packIndex(g)), node.box().from()[g],
                    node.box().to()[g]);
        }
        only.addLessOrEqual(goal, reached - tell);
        CpSolver solver = ExactSharing.solver(LEAF);
        solver.getParameters().setAbsoluteGapLimit(tell - 1);
        CpSolverStatus status = solver.solve(only);
        budget -= solver.response().getDeterministicTime();
        if (status == CpSolverStatus.MODEL_INVALID) {
            throw new IllegalStateException("the sharing model is invalid: " + only.validate());
        }
        if (status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE) {
            best = model.read(solver);
            reached = Math.round(solver.objectiveValue());
        }
        return status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.INFEASIBLE;
    }
}
