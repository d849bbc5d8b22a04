package unthrum.compare;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import unthrum.audit.Audit;
import unthrum.audit.Audit.AuditedPanel;
import unthrum.built.Built;
import unthrum.built.BuiltPanel;
import unthrum.effect.EffectCalculator;
import unthrum.effect.Effects;
import unthrum.effect.PanelEffect;
import unthrum.effect.Treated;
import unthrum.facts.Place;
import unthrum.knowledge.Knowledge;
import unthrum.plan.LeftOut;
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;
import unthrum.effect.Layup;
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
public record Side(String title, Survey survey, List<PanelSide> panels, Effects effects, double mass, double price) {

    /**
     * One panel on one side.
     *
     * @param verdict absent for what was fitted
     * @param leftOut what mass or money left no room for
     * @param effect  what the layers do
     */
    public record PanelSide(PanelEntry entry, Optional<Verdict> verdict, Layup layup, List<Judgement> judgements,
                            List<LeftOut> leftOut, PanelEffect effect) {
        public String name() {
            return entry.panel();
        }
    }

    public static Side of(String title, Plan plan) {
        Map<String, PanelEntry> entries = entries(plan);
        List<PanelSide> panels = plan.panels().stream().map(p -> new PanelSide(entries.get(p.name()),
                Optional.of(p.verdict()), p.layup(), p.advice().panel().judgements(), p.leftOut(),
                effect(plan.effects(), p))).toList();
        return new Side(title, plan.survey(), panels, plan.effects(), plan.totals().mass(), price(panels));
    }

    /** What was fitted, by the effects of what was fitted. */
    public static Side of(String title, Audit audit, Knowledge knowledge) {
        Plan plan = audit.plan();
        Map<String, PanelEntry> entries = entries(plan);
        Map<String, Layup> fitted = audit.panels().stream()
                .collect(Collectors.toMap(AuditedPanel::name, AuditedPanel::fitted));
        Effects effects = EffectCalculator.of(knowledge, plan.survey(), plan.vehicle(), plan.panels().stream().map(p -> p.advice().panel().facts()).toList()).of(plan.panels().stream()
                .map(p -> new Treated(p.advice().panel().facts(), fitted.get(p.name()),
                        closed(audit.built(), p.name())))
                .toList());
        List<PanelSide> panels = plan.panels().stream().map((PlannedPanel p) -> new PanelSide(entries.get(p.name()),
                Optional.empty(), fitted.get(p.name()), p.advice().panel().judgements(), List.of(),
                effect(effects, p))).toList();
        return new Side(title, plan.survey(), panels, effects, audit.totals().mass(), price(panels));
    }

    private static PanelEffect effect(Effects effects, PlannedPanel panel) {
        return effects.panel(panel.name()).orElseThrow();
    }

    /** Of a panel that nobody wrote down no hole is closed. */
    private static Set<Place> closed(Built built, String panel) {
        return built.panel(panel).flatMap(BuiltPanel::closed).orElse(List.of()).stream()
                .map(part -> new Place(panel, part)).collect(Collectors.toSet());
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
