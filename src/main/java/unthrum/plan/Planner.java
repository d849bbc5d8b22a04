package unthrum.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import unthrum.effect.EffectCalculator;
import unthrum.effect.VehicleAccount;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.reasoning.Advisor;
import unthrum.reasoning.PanelAdvice;
import unthrum.derive.Derivation;
import unthrum.derive.PanelFacts;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.RuleEngine;
import unthrum.reasoning.engine.RuleSession;
import unthrum.survey.Survey;

/** Plans a vehicle: derives its facts, lets the rules speak once, advises each panel and shares what is scarce. */
public final class Planner {

    private final Knowledge knowledge;
    private final Catalogue catalogue;
    private final RuleEngine engine;

    public Planner(Knowledge knowledge, Catalogue catalogue) {
        this.knowledge = knowledge;
        this.catalogue = catalogue;
        this.engine = new RuleEngine(knowledge);
    }

    public Plan plan(Survey survey) {
        return plan(survey, Patience.usual());
    }

    /** What the patience leaves unsettled, the plan's proof tells. */
    public Plan plan(Survey survey, Patience patience) {
        List<PanelFacts> bundles = new Derivation(knowledge).of(survey);
        Map<String, List<Judgement>> byPanel = judgements(bundles);
        List<Judgement> vehicle = byPanel.getOrDefault("", List.of());
        VehicleAccount account = VehicleAccount.of(knowledge, survey, bundles);
        Advisor advisor = new Advisor(knowledge, catalogue, account);
        List<PanelAdvice> advice = new ArrayList<>();
        for (int i = 1; i < bundles.size(); i++) {
            PanelFacts facts = bundles.get(i);
            List<Judgement> own = new ArrayList<>(byPanel.getOrDefault(facts.panel(), List.of()));
            own.addAll(vehicle);
            advice.add(advisor.advise(facts, own, survey.panels().get(i - 1).overrules().orElse(List.of())));
        }
        EffectCalculator effects = new EffectCalculator(knowledge, survey, bundles.get(0), account);
        return new Sharing(survey, knowledge, catalogue, account, effects, patience).share(bundles.get(0), vehicle,
                HouseSet.settle(advice, new AlikeOffers(knowledge, account)));
    }

    private Map<String, List<Judgement>> judgements(List<PanelFacts> bundles) {
        try (RuleSession session = engine.open()) {
            bundles.forEach(b -> session.state(b.panel(), b.facts()));
            return session.judgements(c -> true).stream()
                    .collect(Collectors.groupingBy(j -> j.conclusion().place().panel()));
        }
    }
}
