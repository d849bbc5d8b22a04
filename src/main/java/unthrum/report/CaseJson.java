package unthrum.report;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import unthrum.effect.PanelEffect;
import unthrum.knowledge.Knowledge;
import unthrum.knowledge.RuleCard;
import unthrum.plan.PlannedPanel;
import unthrum.reading.Words;
import unthrum.reasoning.engine.Reason;

/** The whole case of one panel as JSON, with the cards of its rules, by {@code unthrum/case.schema.json}. */
public final class CaseJson {

    private CaseJson() {
    }

    public static String of(PlannedPanel planned, PanelEffect effect, Knowledge knowledge) {
        List<RuleCard> rules = planned.advice().panel().judgements().stream().flatMap(j -> j.reasons().stream())
                .map(Reason::rule).distinct().sorted(Comparator.comparing(RuleCard::id)).toList();
        return Json.write(Json.object("format", PlanJson.FORMAT, "kind", "case",
                "case", new PanelJson(planned, effect).object(),
                "rules", rules.stream().map(r -> card(r, knowledge)).toList()));
    }

    private static Map<String, Object> card(RuleCard rule, Knowledge knowledge) {
        return Json.object("id", rule.id(), "says", rule.name(), "pattern", Words.of(rule.pattern()),
                "standing", Words.of(rule.standing()), "weight", rule.weight().map(Words::of),
                "teaches", rule.teaches(), "source", knowledge.sourceTitle(rule.source()));
    }
}
