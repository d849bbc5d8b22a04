package unthrum.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import unthrum.audit.Audit.AuditedPanel;
import unthrum.built.Built;
import unthrum.built.Job;
import unthrum.facts.Panel;
import unthrum.facts.Place;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;
import unthrum.plan.Planner;
import unthrum.survey.Zone;

/** Audits a finished job: plans it anew from its survey and holds what was fitted against the plan's own case. */
public final class Auditor {
    private final Knowledge knowledge;
    private final Catalogue catalogue;
    private final Planner planner;
    private final String trade;

    public Auditor(Knowledge knowledge, Catalogue catalogue) {
        this.knowledge = knowledge;
        this.catalogue = catalogue;
        this.planner = new Planner(knowledge, catalogue);
        this.trade = Digest.of(knowledge, catalogue);
    }

    public Audit audit(Job job) {
        return audit(planner.plan(job.survey()), job.built());
    }

    /** @param plan the plan of the survey that the job was built by */
    public Audit audit(Plan plan, Built built) {
        Map<PlannedPanel, Fitted> fitted = new LinkedHashMap<>();
        plan.panels().forEach(p -> fitted.put(p, built.panel(p.name()).map(b -> Fitted.of(b, p, catalogue))
                .orElse(new Fitted(List.of()))));
        List<Finding> findings = new ArrayList<>();
        List<AuditedPanel> panels = new ArrayList<>();
        fitted.forEach((panel, layers) -> {
            PanelAudit audit = new PanelAudit(plan, panel, built, layers, knowledge);
            List<Finding> own = audit.findings();
            findings.addAll(own);
            panels.add(new AuditedPanel(panel.name(), layers.layup(), audit.duties(), own.size()));
        });
        Finder job = new Finder();
        FittedTotals totals = totals(fitted);
        new JobAudit(plan, built, fitted, job).all(totals);
        String digest = Digest.of(plan.survey(), built, trade);
        signature(built, digest, job);
        findings.addAll(job.findings());
        findings.sort(order(plan));
        return new Audit(plan, built, List.copyOf(findings), panels, totals, digest);
    }

    private static void signature(Built built, String digest, Finder finder) {
        built.signOff().filter(s -> !s.digest().equals(digest)).ifPresent(s -> finder.found(Severity.UNPROVEN,
                Mistake.SIGN_OFF_STALE, Place.VEHICLE, "sign-off", List.of(), List.of(),
                List.of(new Evidence("signed " + s.digest() + ", now " + digest, Optional.of(s.who()),
                        Optional.of(s.when())))));
    }

    private static FittedTotals totals(Map<PlannedPanel, Fitted> fitted) {
        double roof = fitted.entrySet().stream()
                .filter(e -> e.getKey().advice().panel().facts().the(Panel.class).zone() == Zone.ROOF)
                .mapToDouble(e -> e.getValue().layup().mass()).sum();
        return new FittedTotals(fitted.values().stream().mapToDouble(f -> f.layup().mass()).sum(), roof,
                fitted.values().stream().mapToDouble(f -> f.layup().price()).sum());
    }

    /** What must be dealt with before the vehicle leaves, then by weight, then in the survey's order. */
    private static Comparator<Finding> order(Plan plan) {
        List<String> names = plan.panels().stream().map(PlannedPanel::name).toList();
        return Comparator.comparing((Finding f) -> !f.beforeLeaving()).thenComparing(Finding::severity)
                .thenComparing(f -> names.indexOf(f.place().panel())).thenComparing(Finding::place)
                .thenComparing(Finding::mistake).thenComparing(Finding::what)
                .thenComparing(f -> f.rules().toString());
    }
}
