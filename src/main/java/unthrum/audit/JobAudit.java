package unthrum.audit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import unthrum.audit.Proof.Degree;
import unthrum.built.Built;
import unthrum.built.BuiltPanel;
import unthrum.facts.Duty;
import unthrum.facts.Duty.Work;
import unthrum.facts.Limit;
import unthrum.facts.Place;
import unthrum.facts.Room;
import unthrum.material.Layer;
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;
import unthrum.reading.Dimension;
import unthrum.reading.Quantity;
import unthrum.reading.Words;
import unthrum.reasoning.engine.Judgement;
import unthrum.survey.Face;

/** Holds the job as a whole against what is asked of the vehicle: its work, its mass, its signature. */
final class JobAudit {
    /** Judged bay by bay. */
    private static final Set<Work> ON_PANELS = EnumSet.of(Work.TAP_AGAIN);

    private final Plan plan;
    private final Built built;
    private final Map<PlannedPanel, Fitted> fitted;
    private final Finder finder;

    JobAudit(Plan plan, Built built, Map<PlannedPanel, Fitted> fitted, Finder finder) {
        this.plan = plan;
        this.built = built;
        this.fitted = fitted;
        this.finder = finder;
    }

    void all(FittedTotals totals) {
        if (fitted.values().stream().anyMatch(f -> !f.isEmpty())) {
            plan.duties(this::isThere).stream().filter(j -> !ON_PANELS.contains(work(j))).forEach(this::duty);
        }
        if (built.finished().isEmpty()) {
            finder.found(Severity.UNPROVEN, Mistake.NOT_FINISHED, Place.VEHICLE, "finished", List.of());
        }
        payload(totals.mass());
        over("added mass", totals.mass(), plan.totals().massLimit());
        over("mass on the roof", totals.roof(), plan.totals().roofLimit());
    }

    private boolean isThere(Layer layer) {
        return fitted.entrySet().stream().anyMatch(e -> e.getValue().layup().has(layer)
                || layer == Layer.SEAL && !e.getKey().advice().closings().isEmpty());
    }

    static List<Judgement> asking(Plan plan, Work work) {
        return plan.duties(any -> true).stream().filter(j -> work(j) == work).toList();
    }

    private static Work work(Judgement duty) {
        return ((Duty) duty.conclusion()).work();
    }

    private void duty(Judgement duty) {
        Proof proof = work(duty) == Work.REFIT_TRIM && everyTrimIsBack() ? new Proof(Degree.PROVEN, List.of())
                : new Proofs(built, Optional.empty(), plan.vehicle(), new Fitted(List.of()))
                       .of(work(duty), Place.VEHICLE, List.of(duty));
        if (proof.degree() == Degree.DENIED) {
            finder.found(Weighing.harm(List.of(duty), Severity.FAULT), Mistake.WORK_NOT_DONE, Place.VEHICLE,
                    Words.of(work(duty)), List.of(duty), List.of(), proof.evidence());
        } else if (!proof.isProven()) {
            finder.found(Severity.UNPROVEN, Mistake.WORK_NOT_PROVEN, Place.VEHICLE, Words.of(work(duty)),
                    List.of(duty), List.of(), proof.evidence());
        }
    }

    /** Every covered panel that something comes back over says how; how well is judged there. */
    private boolean everyTrimIsBack() {
        List<BuiltPanel> covered = new ArrayList<>();
        fitted.forEach((panel, layers) -> {
            boolean hidden = panel.advice().panel().facts().the(Room.class).to() != Face.NOTHING;
            if (!layers.isEmpty() && hidden) {
                covered.add(built.panel(panel.name()).orElseThrow());
            }
        });
        return !covered.isEmpty() && covered.stream().allMatch(p -> p.trim().isPresent());
    }

    private void payload(double mass) {
        List<Judgement> broken = plan.forAll().stream().filter(j -> j.conclusion() instanceof Limit limit
                && limit.bound() == Limit.Bound.MASS && mass > limit.value() + 1e-9).toList();
        if (!broken.isEmpty()) {
            finder.found(Weighing.limit(broken), Mistake.OVER_THE_JOBS_LIMIT, Place.VEHICLE, "payload", broken,
                    List.of(new Figure("adds", mass, Dimension.MASS), LimitFigures.bound(broken)), List.of());
        }
    }

    private void over(String what, double mass, Optional<Quantity> limit) {
        if (limit.isPresent() && mass > limit.get().si() + 1e-9) {
            finder.found(Severity.FAULT, Mistake.OVER_THE_JOBS_LIMIT, Place.VEHICLE, what, List.of(),
                    List.of(new Figure("adds", mass, Dimension.MASS),
                            new Figure("limit", limit.get().si(), Dimension.MASS)), List.of());
        }
    }
}
