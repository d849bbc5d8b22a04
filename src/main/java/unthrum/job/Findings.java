package unthrum.job;

import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import unthrum.facts.Duty.Work;
import unthrum.facts.Hold;
import unthrum.facts.Hold.Obstacle;
import unthrum.facts.Opening;
import unthrum.facts.Panel;
import unthrum.facts.Room;
import unthrum.job.Assignment.Share;
import unthrum.job.StepKind.Found;
import unthrum.plan.PanelWork;
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;
import unthrum.reasoning.Closing;
import unthrum.reasoning.Verdict;
import unthrum.derive.PanelFacts;
import unthrum.reasoning.engine.Judgement;
import unthrum.survey.Face;
import unthrum.survey.OpeningKind;
import unthrum.survey.Zone;

/** What of a plan brings steps about beside its duties. */
record Findings(Plan plan) {

    /** Whether the plan lays or closes anything. */
    boolean isAnythingDone() {
        return plan.panels().stream().anyMatch(p -> !p.layup().isEmpty() || !p.closings().isEmpty());
    }

    /** Whether something of the vehicle as a whole is to be measured. */
    boolean isVehicleUnknown() {
        return !plan.questions().isEmpty();
    }

    boolean isDangerous() {
        return cautions().findAny().isPresent();
    }

    /** Every danger of the job: those of the whole vehicle, then panel by panel. */
    Stream<Judgement> cautions() {
        return Stream.concat(plan.cautions().stream(), plan.panels().stream().flatMap(p -> p.advice().cautions().stream()));
    }

    /** In the survey's order. */
    List<Share> inOrder(Collection<Share> shares) {
        return plan.panels().stream().flatMap(p -> shares.stream().filter(s -> s.panel() == p)).toList();
    }

    static Zone zone(PlannedPanel panel) {
        return panel.advice().panel().facts().the(Panel.class).zone();
    }

    static boolean lays(StepKind kind, PlannedPanel panel) {
        return panel.layup().layers().stream().anyMatch(l -> kind.lays(l.layer()));
    }

    /** Whether no tool is put to a panel: nobody has looked, its old pads are not tested, or a danger bars it. */
    static boolean isStopped(PlannedPanel panel) {
        boolean waits = panel.advice().holds().stream().map(j -> ((Hold) j.conclusion()).obstacle())
                .anyMatch(o -> o == Obstacle.NOT_LOOKED_AT || o == Obstacle.UNTESTED_PADS);
        return waits || panel.advice().isHandsOff();
    }

    static boolean bringsAbout(StepKind kind, PlannedPanel panel) {
        return kind.found().orElse(List.of()).stream().anyMatch(f -> isFound(f, panel));
    }

    private static boolean isFound(Found found, PlannedPanel panel) {
        PanelFacts facts = panel.advice().panel().facts();
        return switch (found) {
            case LAYER -> !panel.layup().isEmpty();
            case CLOSING, SERVICE_OPENING -> !closings(found, panel).isEmpty();
            case COVER -> !panel.layup().isEmpty() && facts.the(Room.class).to() != Face.NOTHING;
            case DRAIN -> !isStopped(panel) && facts.all(Opening.class).anyMatch(o -> o.kind() == OpeningKind.DRAIN);
            case HOLD -> panel.verdict() == Verdict.HOLD || isStopped(panel) && !PanelWork.of(panel).isEmpty();
            case QUESTION -> !panel.advice().questions().isEmpty();
            case JOB, DANGER -> false;
        };
    }

    /** The holes that a kind of step closes: service openings when all behind them is done, the others before. */
    static List<Closing> closings(StepKind kind, PlannedPanel panel) {
        return kind.found().orElse(List.of()).stream().filter(f -> f == Found.SERVICE_OPENING || kind.does(Work.CLOSE_HOLE))
                .flatMap(f -> closings(f, panel).stream()).toList();
    }

    private static List<Closing> closings(Found found, PlannedPanel panel) {
        return panel.closings().stream().filter(c -> found == (c.opening().kind() == OpeningKind.SERVICE_OPENING
                ? Found.SERVICE_OPENING : Found.CLOSING)).toList();
    }
}
