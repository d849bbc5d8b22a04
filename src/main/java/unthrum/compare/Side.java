package unthrum.compare;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import unthrum.audit.Audit;
import unthrum.audit.Audit.AuditedPanel;
import unthrum.plan.LeftOut;
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;
import unthrum.reasoning.Layup;
import unthrum.reasoning.Verdict;
import unthrum.reasoning.engine.Judgement;
import unthrum.survey.PanelEntry;
import unthrum.survey.Survey;

/**
 * One of two things that are compared.
 *
 * @param mass  kg
 * @param price of what is used, in the catalogue's currency
 */
public record Side(String title, Survey survey, List<PanelSide> panels, double mass, double price) {

    /**
     * One panel on one side.
     *
     * @param verdict absent for what was fitted
     * @param leftOut what mass or money left no room for
     */
    public record PanelSide(PanelEntry entry, Optional<Verdict> verdict, Layup layup, List<Judgement> judgements,
                            List<LeftOut> leftOut) {
        public String name() {
            return entry.panel();
        }
    }

    public static Side of(String title, Plan plan) {
        Map<String, PanelEntry> entries = entries(plan);
        List<PanelSide> panels = plan.panels().stream().map(p -> new PanelSide(entries.get(p.name()),
                Optional.of(p.verdict()), p.layup(), p.advice().panel().judgements(), p.leftOut())).toList();
        return new Side(title, plan.survey(), panels, plan.totals().mass(), price(panels));
    }

    public static Side of(String title, Audit audit) {
        Map<String, PanelEntry> entries = entries(audit.plan());
        Map<String, Layup> fitted = audit.panels().stream()
                .collect(Collectors.toMap(AuditedPanel::name, AuditedPanel::fitted));
        List<PanelSide> panels = audit.plan().panels().stream().map((PlannedPanel p) -> new PanelSide(
                entries.get(p.name()), Optional.empty(), fitted.get(p.name()), p.advice().panel().judgements(),
                List.of())).toList();
        return new Side(title, audit.plan().survey(), panels, audit.totals().mass(), price(panels));
    }

    Optional<PanelSide> panel(String name) {
        return panels.stream().filter(p -> p.name().equals(name)).findFirst();
    }

    private static double price(List<PanelSide> panels) {
        return panels.stream().mapToDouble(p -> p.layup().price()).sum();
    }

    private static Map<String, PanelEntry> entries(Plan plan) {
        return plan.survey().panels().stream().collect(Collectors.toMap(PanelEntry::panel, Function.identity()));
    }
}
