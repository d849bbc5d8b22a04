package unthrum.audit;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import unthrum.built.Built;
import unthrum.built.BuiltPanel;
import unthrum.facts.Duty.Work;
import unthrum.facts.Place;
import unthrum.knowledge.Knowledge;
import unthrum.plan.PanelWork;
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;
import unthrum.reasoning.Overruled;
import unthrum.reasoning.WeighedWant;
import unthrum.reasoning.engine.Judgement;

/** Audits one panel. */
final class PanelAudit {
    private final PlannedPanel planned;
    private final Finder finder = new Finder();
    private int duties;

    PanelAudit(Plan plan, PlannedPanel planned, Built built, Fitted fitted, Knowledge knowledge) {
        this.planned = planned;
        planned.advice().panel().overruled().forEach(this::overrule);
        Optional<BuiltPanel> panel = built.panel(planned.name()).filter(p -> p.layers().isPresent());
        if (panel.isEmpty()) {
            notRecorded();
            return;
        }
        Proofs proofs = new Proofs(built, panel, planned.advice().panel().facts(), fitted);
        new LayerAudit(planned, fitted, knowledge, finder).all();
        new PlanAudit(planned, panel.get(), fitted, proofs, knowledge, finder).all();
        WorkAudit work = new WorkAudit(planned, panel.get(), fitted, proofs, finder);
        work.all(JobAudit.asking(plan, Work.TAP_AGAIN), JobAudit.asking(plan, Work.REFIT_TRIM),
                knowledge.number("audit/trim-gap"));
        duties = work.due().size();
    }

    List<Finding> findings() {
        return finder.findings();
    }

    /** How many pieces of work the panel asks for. */
    int duties() {
        return duties;
    }

    private void notRecorded() {
        List<Judgement> work = PanelWork.of(planned);
        boolean asks = !planned.layup().isEmpty() || !planned.advice().closings().isEmpty() || !work.isEmpty();
        if (asks) {
            finder.found(Severity.UNPROVEN, Mistake.NOT_RECORDED, Place.of(planned.name()), "layers", Stream.concat(
                    planned.advice().wants().stream().filter(WeighedWant::stands).map(WeighedWant::judgement),
                    work.stream()).toList());
        }
    }

    private void overrule(Overruled o) {
        Severity severity = o.effect() == Overruled.Effect.TOO_STRONG ? Severity.FAULT : Severity.UNPROVEN;
        mistake(o.effect()).ifPresent(m -> finder.add(new Finding(severity, m, Place.of(planned.name()), "an overrule",
                o.against(), Optional.of(o.entry().rule()), List.of(), List.of(new Evidence(
                        o.entry().why().orElse("no reason written"), Optional.of(o.entry().who()),
                        Optional.of(o.entry().when()))))));
    }

    private static Optional<Mistake> mistake(Overruled.Effect effect) {
        return switch (effect) {
            case COUNTS -> Optional.empty();
            case NO_REASON -> Optional.of(Mistake.OVERRULE_WITHOUT_REASON);
            case TOO_STRONG -> Optional.of(Mistake.OVERRULE_NOT_ALLOWED);
            case POINTLESS -> Optional.of(Mistake.OVERRULE_POINTLESS);
        };
    }
}
