package unthrum.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import unthrum.knowledge.Knowledge;
import unthrum.reading.Dimension;
import unthrum.reading.Quantity;
import unthrum.reading.Words;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.change.Change;
import unthrum.reasoning.change.Change.Turn;
import unthrum.reasoning.change.Doubt;
import unthrum.reasoning.change.Effect;
import unthrum.reasoning.change.Spot;
import unthrum.reasoning.change.Stakes;
import unthrum.reasoning.change.Turned;
import unthrum.reasoning.change.Unknown;
import unthrum.reasoning.change.WhatIf;
import unthrum.reasoning.change.WhyNot;

/** Changes, questions, doubts and panels as they might be, as JSON. */
public final class ChangesJson {

    private ChangesJson() {
    }

    public static String of(Turned turned, Knowledge knowledge) {
        Sentences sentences = sentences(turned.advice());
        WhyNotWords words = new WhyNotWords(sentences, knowledge);
        List<Object> whyNots = new ArrayList<>();
        for (WhyNot answer : turned.whyNots()) {
            whyNots.add(Json.object("layer", answer.layer().word(), "place", JsonValues.place(answer.place()),
                    "cause", Words.key(answer.getClass().getSimpleName()).strip(), "says", words.of(answer),
                    "tree", words.tree(answer)));
        }
        return Json.write(Json.object("format", PlanJson.FORMAT, "kind", "changes", "panel", turned.advice().name(),
                "verdict", Words.of(turned.advice().verdict()), "whyNot", whyNots,
                "changes", turned.changes().stream().map(c -> change(c, sentences)).toList(),
                "confidence", Json.object("measured", turned.confidence().isMeasured(),
                        "assumed", turned.confidence().assumptions().stream().map(a -> a.fact()).toList(),
                        "typical", turned.confidence().typical().stream().map(m -> m.material()).toList(),
                        "nearest", turned.confidence().nearest().map(c -> change(c, sentences)))));
    }

    public static String of(WhatIf whatIf) {
        Sentences today = sentences(whatIf.today());
        Sentences changed = sentences(whatIf.changed());
        return Json.write(Json.object("format", PlanJson.FORMAT, "kind", "what if", "panel", whatIf.today().name(),
                "turns", whatIf.turns().stream().map(ChangesJson::turn).toList(),
                "effects", whatIf.effects().stream().map(ChangesJson::effect).toList(),
                "today", got(whatIf.today()), "then", got(whatIf.changed()),
                "gone", whatIf.gone().stream().map(j -> JsonValues.judgement(j, today)).toList(),
                "come", whatIf.come().stream().map(j -> JsonValues.judgement(j, changed)).toList()));
    }

    /**
     * @param slight   panels that stay bare because hardly anything would be gained
     * @param currency the one of the catalogue's prices
     */
    public static String of(String survey, List<Unknown> unknowns, List<PanelAdvice> slight, String currency) {
        return Json.write(Json.object("format", PlanJson.FORMAT, "kind", "questions", "survey", survey,
                "questions", unknowns.stream().filter(Unknown::decides).map(u -> question(u, currency)).toList(),
                "slight", slight.stream().map(a -> Json.object("panel", a.name(),
                        "best", PanelJson.scored(a.slight().orElseThrow()))).toList(),
                "idle", unknowns.stream().filter(u -> !u.decides())
                        .map(u -> Json.object("panel", u.panel(), "fact", u.lever().name())).toList()));
    }

    public static String ofDoubts(String survey, List<Doubt> doubts) {
        List<Object> all = new ArrayList<>();
        for (Doubt doubt : doubts) {
            Sentences sentences = sentences(doubt.advice());
            all.add(Json.object("panel", doubt.advice().name(), "verdict", Words.of(doubt.advice().verdict()),
                    "flips", doubt.flips().stream().map(c -> change(c, sentences)).toList(),
                    "assumed", doubt.assumptions().stream().map(a -> a.fact()).toList(),
                    "taps", doubt.taps().stream().map(j -> JsonValues.judgement(j, sentences)).toList(),
                    "slight", doubt.slight(),
                    "contests", doubt.contests().stream()
                            .map(w -> JsonValues.judgement(w.judgement(), sentences)).toList()));
        }
        return Json.write(Json.object("format", PlanJson.FORMAT, "kind", "doubts", "survey", survey, "panels", all));
    }

    private static Sentences sentences(PanelAdvice advice) {
        return new Sentences(PlaceNames.on(advice.panel().facts()));
    }

    private static Map<String, Object> got(PanelAdvice advice) {
        return Json.object("verdict", Words.of(advice.verdict()), "layup", PanelJson.names(advice.layup()),
                "mass", JsonValues.quantity(advice.layup().mass(), Dimension.MASS));
    }

    private static Map<String, Object> change(Change change, Sentences sentences) {
        return Json.object("use", Words.of(change.use()), "turns", change.turns().stream().map(ChangesJson::turn).toList(),
                "effects", change.effects().stream().map(ChangesJson::effect).toList(),
                "layup", PanelJson.names(change.layup()), "says", English.sentence(LeverWords.turns(change.turns()) + ", "
                        + new EffectWords(sentences).of(change.effects(), change.layup())));
    }

    private static Map<String, Object> turn(Turn turn) {
        return Json.object("fact", turn.lever().name(), "today", turn.lever().today().map(ChangesJson::value),
                "stated", turn.lever().stated(), "to", value(turn.to()));
    }

    private static Object value(Object value) {
        return value instanceof Quantity quantity ? JsonValues.quantity(quantity.si(), quantity.dimension())
                : LeverWords.value(value);
    }

    private static Map<String, Object> effect(Effect effect) {
        if (effect instanceof Effect.Becomes becomes) {
            return Json.object("verdict", Words.of(becomes.verdict()));
        }
        boolean gains = effect instanceof Effect.Gains;
        Spot spot = gains ? ((Effect.Gains) effect).spot() : ((Effect.Loses) effect).spot();
        return Json.object(gains ? "gains" : "loses", spot.layer().word(), "place", JsonValues.place(spot.place()));
    }

    private static Map<String, Object> question(Unknown unknown, String currency) {
        Stakes stakes = unknown.stakes();
        return Json.object("panel", unknown.panel(), "fact", unknown.lever().name(),
                "assumed", unknown.assumed().map(a -> a.value()), "measure", unknown.lever().how().measure(),
                "stakes", Json.object("danger", stakes.danger(), "layers", stakes.layers(),
                        "gain", JsonValues.quantity(stakes.gain(), Dimension.SHARE),
                        "mass", JsonValues.quantity(stakes.mass(), Dimension.MASS),
                        "price", JsonValues.money(stakes.price(), currency)),
                "ways", unknown.ways().stream().map(w -> Json.object("to", value(w.turn().to()),
                        "effects", w.effects().stream().map(ChangesJson::effect).toList())).toList());
    }
}
