package unthrum.job;

import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import unthrum.plan.Plan;
import unthrum.reasoning.engine.Judgement;

/**
 * The order of work for a plan: its steps, each after all that it waits for. Steps are counted from 0.
 *
 * @param edges    what comes before what, and why
 * @param waitsFor for each step all that it waits for, straight or through others
 */
public record JobCard(Plan plan, StepTable table, List<Step> steps, List<Edge> edges, List<BitSet> waitsFor) {

    /** What a step finds out: the open questions on the vehicle, then those on its panels. */
    public List<Judgement> questions(Step step) {
        return !step.kind().measures() ? List.of() : Stream.concat(plan.questions().stream(), step.tasks().stream()
                .flatMap(t -> plan.panel(t.panel()).orElseThrow().advice().questions().stream())).toList();
    }

    /** The steps that this one waits for, less those that they wait for in turn. */
    public List<Integer> after(int step) {
        BitSet all = waitsFor.get(step);
        return all.stream().filter(b -> all.stream().noneMatch(other -> waitsFor.get(other).get(b))).boxed().toList();
    }

    /** The steps that may run at the same time: neither waits for the other, and nothing keeps them apart. */
    public List<Integer> beside(int step) {
        return IntStream.range(0, steps.size()).filter(o -> o != step)
                .filter(o -> !waitsFor.get(step).get(o) && !waitsFor.get(o).get(step))
                .filter(o -> !table.keepsApart(steps.get(step).kind(), steps.get(o).kind())).boxed().toList();
    }

    /** The rules that make one step wait for another: the habits, and the duties that bring both steps about. */
    public Set<String> why(int before, int then) {
        Set<String> rules = new LinkedHashSet<>();
        edges.stream().filter(e -> e.before() == before && e.then() == then).forEach(e -> rules.add(e.rule().order()));
        rules.addAll(steps.get(before).rules());
        rules.addAll(steps.get(then).rules());
        return rules;
    }

    /** Estimated labour in s, added up over all hands. */
    public double labour() {
        return steps.stream().mapToDouble(Step::labour).sum();
    }

    /**
     * The shortest that the job can take with hands enough, in s: its longest chain of steps with their least waits.
     */
    public double soonest() {
        double[] ends = new double[steps.size()];
        for (int i = 0; i < ends.length; i++) {
            double begins = waitsFor.get(i).stream().mapToDouble(b -> ends[b]).max().orElse(0);
            ends[i] = begins + steps.get(i).lasts();
        }
        return DoubleStream.of(ends).max().orElse(0);
    }
}
