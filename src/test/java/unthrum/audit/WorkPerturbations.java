package unthrum.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import unthrum.built.BuiltPanel;
import unthrum.built.BuiltPanel.Drains;
import unthrum.built.BuiltPanel.Travel;
import unthrum.built.BuiltPanel.TrimBack;
import unthrum.built.Done;
import unthrum.built.Edit;
import unthrum.facts.Duty.Work;
import unthrum.facts.Place;
import unthrum.knowledge.Standing;
import unthrum.material.Layer;
import unthrum.effect.Patch;
import unthrum.reasoning.Verdict;
import unthrum.reasoning.engine.Judgement;
import unthrum.survey.Tap;

/** Work on one panel of a sound job left undone, unshown or unwritten. */
final class WorkPerturbations extends Perturbations {
    WorkPerturbations(Oracle oracle, BuiltPanel sound, Random random) {
        super(oracle, sound, random);
    }

    /** Empty where the panel gives no occasion for it. */
    Optional<Perturbation> of(Perturbation.Kind kind) {
        return switch (kind) {
            case WORK_UNDONE -> any(works()).map(this::undone);
            case WORK_UNSHOWN -> any(works()).map(this::unshown);
            case HOLE_OPEN -> any(sound.closed().orElseThrow()).map(this::open);
            case DRAINS_BLOCKED -> Optional.of(with("drains", Drains.BLOCKED, oracle.undone(due(this::needsDrains))));
            case TRAVEL_TOUCHES -> Optional.of(with("travel", Travel.TOUCHES, oracle.undone(due(j ->
                    Set.of(Work.CHECK_TRAVEL, Work.KEEP_TRAVEL).contains(Oracle.work(j)))).stream()
                    .map(e -> new Expected(Severity.DANGER, Mistake.TOUCHES, e.place(), e.rules())).toList()));
            case TRIM_FORCED -> Optional.of(trimForced());
            case STILL_RINGS -> Optional.of(stillRings());
            case NOT_TAPPED -> Optional.of(notTapped());
            case NOT_RECORDED -> Optional.of(notRecorded());
            default -> throw new IllegalArgumentException(kind + " is not about work");
        };
    }

    private boolean needsDrains(Judgement duty) {
        return Set.of(Work.CHECK_DRAINS, Work.CLEAR_DRAIN).contains(Oracle.work(duty))
                || Set.of(Work.KEEP_OPEN, Work.KEEP_CLEAR).contains(Oracle.work(duty))
                && oracle.isDrain(duty.conclusion().place());
    }

    private List<Work> works() {
        return due(j -> true).stream().map(Oracle::work).distinct().toList();
    }

    private Perturbation undone(Work work) {
        return with("done", done(work, "done", Optional.of(false)),
                oracle.undone(due(j -> Oracle.work(j) == work && !oracle.isTried(j))));
    }

    /** A name and a day prove what is only practice, and what was told. */
    private Perturbation unshown(Work work) {
        List<Expected> expected = due(j -> Oracle.work(j) == work && !oracle.isTried(j)).stream()
                .filter(j -> work != Work.TELL_OWNER && j.standing().compareTo(Standing.PRACTICE) < 0)
                .map(j -> Expected.of(Severity.UNPROVEN, Mistake.WORK_NOT_PROVEN, j.conclusion().place(), List.of(j)))
                .toList();
        return with("done", done(work, "photo", Optional.empty()), expected);
    }

    private List<Done> done(Work work, String component, Object value) {
        return sound.done().orElseThrow().stream()
                .map(d -> d.work().contains(work) ? Edit.with(d, component, value) : d).toList();
    }

    private Perturbation open(String part) {
        Place hole = new Place(oracle.panel.name(), part);
        List<Judgement> by = new ArrayList<>(due(j -> Oracle.work(j) == Work.CLOSE_HOLE
                && j.conclusion().place().equals(hole)));
        if (oracle.panel.verdict() != Verdict.HOLD) {
            oracle.panel.advice().closings().stream().filter(c -> c.opening().place().equals(hole))
                    .forEach(c -> by.add(c.want().judgement()));
        }
        boolean plannedOpen = oracle.panel.leftOut().stream().anyMatch(l -> l.patch().place().equals(hole));
        boolean binds = !by.isEmpty() && (!plannedOpen || Oracle.weigh(by, Severity.FAULT) == Severity.DANGER);
        return with("closed", sound.closed().orElseThrow().stream().filter(p -> !p.equals(part)).toList(), binds
                ? List.of(Expected.of(Oracle.weigh(by, Severity.FAULT), Mistake.WORK_NOT_DONE, hole, by)) : List.of());
    }

    private List<Judgement> ofTheJob(Work work) {
        return oracle.plan.duties(any -> true).stream().filter(j -> Oracle.work(j) == work).toList();
    }

    private Perturbation trimForced() {
        List<Judgement> asking = ofTheJob(Work.REFIT_TRIM);
        List<Expected> expected = new ArrayList<>(oracle.undone(due(j -> Oracle.work(j) == Work.REFIT_TRIM)));
        expected.add(Expected.of(Oracle.weigh(asking, Severity.FAULT), Mistake.TRIM_STANDS_OFF, oracle.whole, asking));
        return with("trim", new TrimBack(TrimBack.Fit.WITH_FORCE, Optional.empty()), expected);
    }

    private List<Place> damped() {
        return laid.stream().filter(l -> l.layer() == Layer.DAMPING).flatMap(l -> l.patches().stream())
                .map(Patch::place)
                .flatMap(p -> oracle.bays().stream().map(b -> b.place()).filter(b -> b.within(p))).distinct().toList();
    }

    private Perturbation stillRings() {
        return with("tapAfter", List.of(Tap.RINGS), damped().stream().filter(b -> !ofTheJob(Work.TAP_AGAIN).isEmpty())
                .map(b -> Expected.of(Severity.FAULT, Mistake.STILL_RINGS, b, ofTheJob(Work.TAP_AGAIN))).toList());
    }

    private Perturbation notTapped() {
        List<Judgement> asking = ofTheJob(Work.TAP_AGAIN);
        return with("tapAfter", List.of(Tap.NOT_TAPPED), damped().isEmpty() || asking.isEmpty() ? List.of()
                : List.of(Expected.of(Severity.UNPROVEN, Mistake.WORK_NOT_PROVEN, oracle.whole, asking)));
    }

    private Perturbation notRecorded() {
        List<Judgement> work = oracle.asked(layers());
        boolean asks = !laid.isEmpty() || !oracle.panel.advice().closings().isEmpty() || !work.isEmpty();
        List<Judgement> by = new ArrayList<>(work);
        Arrays.stream(Layer.values()).forEach(l -> by.addAll(oracle.wants(l, p -> true)));
        return new Perturbation(Edit.with(sound, "layers", Optional.empty()), asks
                ? List.of(Expected.of(Severity.UNPROVEN, Mistake.NOT_RECORDED, oracle.whole, by)) : List.of());
    }
}
