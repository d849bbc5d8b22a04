package unthrum.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import unthrum.facts.AimedAt;
import unthrum.facts.Caution;
import unthrum.facts.Conclusion;
import unthrum.facts.Duty;
import unthrum.facts.Fact;
import unthrum.facts.Hold;
import unthrum.facts.Limit;
import unthrum.facts.Pairing;
import unthrum.facts.Place;
import unthrum.facts.Question;
import unthrum.facts.Threshold;
import unthrum.facts.Veto;
import unthrum.facts.Want;
import unthrum.reading.Dimension;
import unthrum.reading.Words;
import unthrum.reasoning.engine.Components;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.Reason;
import unthrum.reasoning.engine.Reason.Compared;

/** Conclusions, reasons and quantities as parts of a JSON document. */
final class JsonValues {

    private JsonValues() {
    }

    /** A quantity in the unit it is shown in. */
    static Map<String, Object> quantity(double si, Dimension dimension) {
        return Json.object("value", Json.number(dimension.shownIn().fromSi(si)),
                "unit", dimension == Dimension.NUMBER ? null : dimension.shownIn().symbol());
    }

    static Map<String, Object> money(double amount, String currency) {
        return Json.object("amount", Json.number(amount), "currency", currency);
    }

    static Map<String, Object> place(Place place) {
        return Json.object("panel", place.panel(), "part", place.part().isEmpty() ? null : place.part());
    }

    /** A conclusion with its reasons; sentences are rendered from the values beside them. */
    static Map<String, Object> judgement(Judgement judgement, Sentences sentences) {
        Map<String, Object> object = Json.object(
                "kind", judgement.conclusion().getClass().getSimpleName().toLowerCase(java.util.Locale.ROOT),
                "place", place(judgement.conclusion().place()));
        object.putAll(own(judgement.conclusion()));
        object.put("standing", Words.of(judgement.standing()));
        object.put("reasons", judgement.reasons().stream().map(r -> reason(r, sentences)).toList());
        return object;
    }

    private static Map<String, Object> own(Conclusion conclusion) {
        if (conclusion instanceof Want want) {
            return Json.object("layer", want.layer().word());
        }
        if (conclusion instanceof Veto veto) {
            return Json.object("layer", veto.layer().word());
        }
        if (conclusion instanceof Limit limit) {
            boolean trait = limit.bound().dimension() == Dimension.NUMBER;
            return Json.object("layer", limit.layer().word(), "bound", Words.of(limit.bound()),
                    "limit", trait ? null : quantity(limit.value(), limit.bound().dimension()));
        }
        if (conclusion instanceof Pairing pairing) {
            return Json.object("layer", pairing.layer().word(), "tie", Words.key(Words.of(pairing.tie())),
                    "other", pairing.other().word());
        }
        return conclusion instanceof Question question ? Json.object("fact", question.fact())
                : Json.object("what", what(conclusion));
    }

    private static String what(Conclusion conclusion) {
        if (conclusion instanceof Duty duty) {
            return Words.of(duty.work());
        }
        return conclusion instanceof Caution caution ? Words.of(caution.danger())
                : Words.of(((Hold) conclusion).obstacle());
    }

    private static Map<String, Object> reason(Reason reason, Sentences sentences) {
        List<Object> thresholds = new ArrayList<>();
        reason.bindings().values().stream().filter(Threshold.class::isInstance).map(Threshold.class::cast)
                .forEach(t -> thresholds.add(threshold(t)));
        return Json.object("rule", reason.rule().id(),
                "advice", reason.rule().advice().map(a -> sentences.advice(reason)),
                "because", sentences.because(reason),
                "facts", reason.compared().stream().map(JsonValues::compared).toList(),
                "thresholds", thresholds);
    }

    private static Map<String, Object> threshold(Threshold threshold) {
        Map<String, Object> object = Json.object("id", threshold.id());
        object.putAll(quantity(threshold.value(), threshold.dimension()));
        return object;
    }

    private static Map<String, Object> compared(Compared compared) {
        Fact fact = compared.fact();
        Map<String, Object> object = Json.object("of", fact instanceof AimedAt ? "aim"
                        : Words.key(fact.getClass().getSimpleName()).strip(),
                "place", place(fact.place()), "component", Words.key(compared.component()));
        object.putAll(value(compared));
        object.put("assumed", compared.assumed());
        return object;
    }

    private static Map<String, Object> value(Compared compared) {
        Object value = compared.value();
        if (value instanceof Double number) {
            return quantity(number, Components.dimension(compared.fact().getClass(), compared.component())
                    .orElse(Dimension.NUMBER));
        }
        boolean plain = value instanceof Boolean || value instanceof Integer;
        return Json.object("value", plain ? value : Sentences.shown(compared.fact(), compared.component()));
    }

}
