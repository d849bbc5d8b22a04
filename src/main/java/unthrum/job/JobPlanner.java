package unthrum.job;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import unthrum.facts.Caution;
import unthrum.facts.Panel;
import unthrum.job.Assignment.Share;
import unthrum.job.StepKind.Found;
import unthrum.job.StepKind.Wait;
import unthrum.job.StepTable.Spot;
import unthrum.knowledge.Knowledge;
import unthrum.knowledge.ThresholdEntry;
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;
import unthrum.reading.Quantity;
import unthrum.reasoning.Closing;
import unthrum.effect.Laid;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.Reason;

/** Puts the work of a plan into steps and the steps into order. */
public final class JobPlanner {

    private static final int TWO = 2;

    private final Knowledge knowledge;
    private final StepTable table;

    public JobPlanner(Knowledge knowledge, StepTable table) {
        this.knowledge = knowledge;
        this.table = table;
    }

    public JobCard card(Plan plan) {
        Assignment assignment = new Assignment(table, plan);
        List<Spot> taken = assignment.taken();
        List<Integer> order = Ordering.of(taken.size(), table.edges(taken));
        List<Spot> spots = order.stream().map(taken::get).toList();
        List<Edge> edges = table.edges(spots);
        List<BitSet> waitsFor = Ordering.closure(spots.size(), edges);
        List<Judgement> cautions = new Findings(plan).cautions().toList();
        List<Step> steps = spots.stream().map(s -> step(s, assignment, cautions)).toList();
        return new JobCard(plan, table, steps, edges, waitsFor);
    }

    private Step step(Spot spot, Assignment assignment, List<Judgement> dangers) {
        StepKind kind = spot.kind();
        List<Share> shares = assignment.shares(spot);
        List<Task> tasks = shares.stream().map(s -> task(kind, s)).toList();
        List<Judgement> asks = new ArrayList<>(assignment.wholeJob(spot));
        shares.forEach(s -> asks.addAll(s.asks()));
        Supplies supplies = Supplies.of(kind, tasks, asks);
        Set<String> panels = tasks.stream().map(Task::panel).collect(Collectors.toSet());
        List<Judgement> cautions = kind.comesOf(Found.DANGER) ? dangers
                : dangers.stream().filter(c -> kind.runsInto(((Caution) c.conclusion()).danger(), supplies.glued()))
                        .flatMap(c -> on(panels, c).stream()).toList();
        double area = tasks.stream().mapToDouble(Task::area).sum();
        return new Step(kind, spot.area(), tasks, asks, cautions, people(spot, tasks, asks),
                pauses(kind, asks, supplies.glued()), supplies, kind.labour().seconds(tasks.size(), area));
    }

    private static Task task(StepKind kind, Share share) {
        PlannedPanel panel = share.panel();
        List<Laid> layers = panel.layup().layers().stream().filter(l -> kind.lays(l.layer())).toList();
        List<Closing> closings = Findings.closings(kind, panel);
        List<String> parts = share.asks().stream().map(a -> a.conclusion().place().part()).filter(p -> !p.isEmpty())
                .distinct().toList();
        double area = kind.lays() ? layers.stream().mapToDouble(Laid::area).sum()
                : panel.advice().panel().facts().the(Panel.class).area();
        return new Task(panel.name(), parts, layers, closings, area);
    }

    /** A danger with those of its reasons that concern one of the panels; all where the step is on no panel. */
    private static Optional<Judgement> on(Set<String> panels, Judgement caution) {
        List<Reason> reasons = caution.reasons().stream().filter(r -> panels.isEmpty()
                || concerned(caution, r).allMatch(panels::contains)).toList();
        return reasons.isEmpty() ? Optional.empty() : Optional.of(new Judgement(caution.conclusion(), reasons));
    }

    /** The panels that a reason for a danger names; none where the whole vehicle is meant. */
    private static Stream<String> concerned(Judgement caution, Reason reason) {
        String panel = caution.conclusion().place().panel();
        return panel.isEmpty() ? reason.bindings().values().stream().filter(Panel.class::isInstance)
                .map(p -> ((Panel) p).name()) : Stream.of(panel);
    }

    private int people(Spot spot, List<Task> tasks, List<Judgement> asks) {
        StepKind kind = spot.kind();
        boolean heavy = kind.lays() && tasks.stream().anyMatch(t -> t.mass() > knowledge.number("job/one-person-load"));
        boolean large = kind.lays() && spot.area().filter(table::isOverhead).isPresent()
                && tasks.stream().anyMatch(t -> t.largest() > knowledge.number("job/overhead-alone"));
        boolean asked = asks.stream().flatMap(a -> a.reasons().stream())
                .anyMatch(r -> kind.rulesForTwo().orElse(List.of()).contains(r.rule().id()));
        return Math.max(kind.people().orElse(1), heavy || large || asked ? TWO : 1);
    }

    private List<Pause> pauses(StepKind kind, List<Judgement> asks, boolean glued) {
        Set<String> rules = asks.stream().flatMap(a -> a.reasons().stream()).map(r -> r.rule().id())
                .collect(Collectors.toSet());
        return kind.waits().orElse(List.of()).stream().filter(w -> w.rules().isEmpty()
                        || w.rules().get().stream().anyMatch(rules::contains))
                .filter(w -> glued || !w.glued().orElse(false)).map(this::pause).toList();
    }

    private Pause pause(Wait wait) {
        Optional<ThresholdEntry> least = wait.least().map(knowledge::threshold);
        Optional<ThresholdEntry> most = wait.most().map(knowledge::threshold);
        List<String> sources = Stream.of(least, most).flatMap(Optional::stream)
                .map(ThresholdEntry::source).distinct().toList();
        return new Pause(wait.until(), seconds(least), seconds(most), sources);
    }

    private static OptionalDouble seconds(Optional<ThresholdEntry> time) {
        return time.map(ThresholdEntry::value).map(Quantity::si).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
