package unthrum.job;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;

/** Sorts steps so that each comes after all that it waits for (A. B. Kahn, Communications of the ACM 5(11), 1962). */
final class Ordering {

    /** Steps that wait for each other in a ring: no order of them is right. */
    static final class Circle extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final transient List<Edge> edges;

        Circle(List<Edge> edges) {
            super("the order of work goes in a circle by " + edges.stream().map(e -> e.rule().order()).distinct().toList());
            this.edges = edges;
        }

        /** The ring, each edge ending where the next begins. */
        List<Edge> edges() {
            return edges;
        }
    }

    private Ordering() {
    }

    /** The steps in an order that keeps every edge; among those that are free, the first of the list comes first. */
    static List<Integer> of(int steps, List<Edge> edges) {
        List<Integer> order = new ArrayList<>();
        BitSet done = new BitSet(steps);
        while (order.size() < steps) {
            int next = -1;
            for (int i = done.nextClearBit(0); i < steps && next < 0; i = done.nextClearBit(i + 1)) {
                int step = i;
                boolean free = edges.stream().noneMatch(e -> e.then() == step && !done.get(e.before()));
                next = free ? step : -1;
            }
            if (next < 0) {
                throw new Circle(circle(done, edges));
            }
            done.set(next);
            order.add(next);
        }
        return order;
    }

    /** Walking back from a step that waits for ever, one comes by a step for the second time. */
    private static List<Edge> circle(BitSet done, List<Edge> edges) {
        Deque<Edge> way = new ArrayDeque<>();
        int at = done.nextClearBit(0);
        while (true) {
            int step = at;
            List<Edge> walked = List.copyOf(way);
            for (int i = 0; i < walked.size(); i++) {
                if (walked.get(i).then() == step) {
                    return walked.subList(0, i + 1);
                }
            }
            Edge back = edges.stream().filter(e -> e.then() == step && !done.get(e.before())).findFirst().orElseThrow();
            way.push(back);
            at = back.before();
        }
    }

    /** For each step all the steps that it waits for, straight or through others. */
    static List<BitSet> closure(int steps, List<Edge> edges) {
        List<BitSet> waitsFor = new ArrayList<>();
        for (int i = 0; i < steps; i++) {
            waitsFor.add(new BitSet(steps));
        }
        for (int step : of(steps, edges)) {
            edges.stream().filter(e -> e.then() == step).forEach(e -> {
                waitsFor.get(step).set(e.before());
                waitsFor.get(step).or(waitsFor.get(e.before()));
            });
        }
        return waitsFor;
    }
}
