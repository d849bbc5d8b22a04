package unthrum.job;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import unthrum.facts.Duty.Work;
import unthrum.facts.Want;
import unthrum.job.StepKind.Found;
import unthrum.job.StepTable.Spot;
import unthrum.plan.PanelWork;
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;
import unthrum.reasoning.Verdict;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.Reason;

/** Gives every layer, hole and duty of a plan to the steps that see to them. */
final class Assignment {

    /** What one kind of step does on one panel. */
    record Share(PlannedPanel panel, List<Judgement> asks) {
    }

    private static final Set<Work> SAFE = EnumSet.of(Work.TEST_OLD_LAYER, Work.TELL_OWNER);

    private final StepTable table;
    private final Findings findings;
    private final Map<StepKind, Map<String, Share>> shares = new LinkedHashMap<>();
    private final Map<Spot, List<Judgement>> wholeJob = new LinkedHashMap<>();

    Assignment(StepTable table, Plan plan) {
        this.table = table;
        this.findings = new Findings(plan);
        table.steps().forEach(kind -> shares.put(kind, new LinkedHashMap<>()));
        for (PlannedPanel panel : plan.panels()) {
            table.steps().stream().filter(k -> k.isDoneIn(area(panel)))
                    .filter(k -> Findings.lays(k, panel) || Findings.bringsAbout(k, panel)).forEach(k -> share(k, panel));
            PanelWork.of(panel).forEach(duty -> duty.reasons().forEach(r -> give(panel, duty, r)));
        }
        table.steps().forEach(k -> k.with().ifPresent(with -> shares.get(kind(with)).values()
                .forEach(s -> share(k, s.panel()))));
        if (findings.isAnythingDone()) {
            plan.duties().forEach(duty -> duty.reasons().forEach(r -> give(duty, r)));
        }
    }

    /** The steps that the job takes, in the order of the table. */
    List<Spot> taken() {
        return table.spots().stream().filter(s -> !shares(s).isEmpty() || wholeJob.containsKey(s)
                || s.kind().measures() && findings.isVehicleUnknown()
                || s.kind().comesOf(Found.JOB) && findings.isAnythingDone()
                || s.kind().comesOf(Found.DANGER) && findings.isDangerous()).toList();
    }

    /** What a step does, panel by panel, in the survey's order. */
    List<Share> shares(Spot spot) {
        return findings.inOrder(shares.get(spot.kind()).values()).stream()
                .filter(s -> spot.area().isEmpty() || spot.area().get().equals(area(s.panel()))).toList();
    }

    /** The duties of the job as a whole that a step meets. */
    List<Judgement> wholeJob(Spot spot) {
        return wholeJob.getOrDefault(spot, List.of());
    }

    private Area area(PlannedPanel panel) {
        return table.area(Findings.zone(panel));
    }

    private Share share(StepKind kind, PlannedPanel panel) {
        return shares.get(kind).computeIfAbsent(panel.name(), n -> new Share(panel, new ArrayList<>()));
    }

    private StepKind kind(String step) {
        return table.steps().stream().filter(k -> k.step().equals(step)).findFirst().orElseThrow();
    }

    private void give(PlannedPanel panel, Judgement duty, Reason reason) {
        StepKind kind = Findings.isStopped(panel) ? whileStopped(duty)
                : panel.verdict() == Verdict.HOLD ? whileHeld(duty, reason) : choice(panel, duty, reason);
        share(kind, panel).asks().add(new Judgement(duty.conclusion(), List.of(reason)));
    }

    /** What can be done on a panel that waits; all else is decided when the wait is over. */
    private StepKind whileHeld(Judgement duty, Reason reason) {
        return able(duty, reason).stream().filter(StepKind::isDoneWhileHeld).findFirst()
                .orElseGet(this::deciding);
    }

    /** Nothing but what finds out more, or what is only said. */
    private StepKind whileStopped(Judgement duty) {
        return SAFE.contains(PanelWork.work(duty)) ? able(duty).stream().filter(StepKind::isDoneWhileHeld).findFirst()
                .orElseGet(this::deciding) : deciding();
    }

    private StepKind deciding() {
        return table.steps().stream().filter(StepKind::decides).findFirst().orElseThrow();
    }

    /** The step of the layer that the reason speaks of, else the last that does such work, one on the panel first. */
    private StepKind choice(PlannedPanel panel, Judgement duty, Reason reason) {
        List<StepKind> able = able(duty, reason).stream().filter(k -> k.isDoneIn(area(panel)))
                .filter(k -> !k.lays() || k.stage() != Stage.FIT || Findings.lays(k, panel)).toList();
        Optional<StepKind> ofItsLayer = able.stream().filter(k -> speaksOf(reason, k)).findFirst();
        return ofItsLayer.or(() -> last(able.stream().filter(k -> shares.get(k).containsKey(panel.name())).toList()))
                .or(() -> last(able)).or(() -> last(table.steps().stream()
                .filter(k -> Findings.lays(k, panel)).toList())).orElseThrow(() -> new IllegalStateException(
                "no step takes up the work of '" + reason.rule().id() + "' on " + panel.name()));
    }

    private static boolean speaksOf(Reason reason, StepKind kind) {
        return reason.bindings().values().stream().anyMatch(b -> b instanceof Want want && kind.lays(want.layer()))
                || reason.rule().layer().filter(l -> kind.layers().orElse(List.of()).contains(l)).isPresent();
    }

    private static Optional<StepKind> last(List<StepKind> kinds) {
        return kinds.isEmpty() ? Optional.empty() : Optional.of(kinds.get(kinds.size() - 1));
    }

    private List<StepKind> able(Judgement duty, Reason reason) {
        List<StepKind> named = table.steps().stream().filter(k -> k.isAskedBy(reason.rule().id())).toList();
        return named.isEmpty() ? able(duty) : named;
    }

    private List<StepKind> able(Judgement duty) {
        return table.steps().stream().filter(k -> k.does(PanelWork.work(duty))).toList();
    }

    /** A duty of the whole job goes to every step that does such work; where there is none, to one in the last area. */
    private void give(Judgement duty, Reason reason) {
        List<Spot> spots = doing(able(duty, reason));
        spots = spots.isEmpty() ? doing(able(duty)) : spots;
        if (spots.isEmpty()) {
            Area last = table.areas().get(table.areas().size() - 1);
            spots = List.of(new Spot(able(duty, reason).get(0), Optional.of(last)));
        }
        spots.forEach(s -> wholeJob.computeIfAbsent(s, k -> new ArrayList<>())
                .add(new Judgement(duty.conclusion(), List.of(reason))));
    }

    private List<Spot> doing(List<StepKind> kinds) {
        return table.spots().stream().filter(s -> kinds.contains(s.kind()))
                .filter(s -> s.area().isEmpty() || !shares(s).isEmpty()).toList();
    }
}
