package unthrum.report;

import java.util.Map;
import java.util.OptionalDouble;
import unthrum.compare.AimChange;
import unthrum.compare.Comparison;
import unthrum.compare.EffectChange;
import unthrum.compare.FactChange;
import unthrum.compare.PanelChange;
import unthrum.compare.Side;
import unthrum.compare.Side.PanelSide;
import unthrum.reading.Dimension;
import unthrum.reading.Words;

/** A comparison as JSON, complete, by the published schema {@code unthrum/comparison.schema.json}. */
public final class ComparisonJson {
    /** Goes up when a program that reads the JSON would have to change. */
    static final int FORMAT = 1;

    private final Sentences sentences = new Sentences(PlaceNames.anywhere());
    private final String currency;

    private ComparisonJson(String currency) {
        this.currency = currency;
    }

    /** @param currency of the catalogue, for what is used */
    public static String of(Comparison comparison, String currency) {
        return Json.write(new ComparisonJson(currency).object(comparison));
    }

    private Map<String, Object> object(Comparison c) {
        return Json.object("format", FORMAT, "kind", "comparison", "before", side(c.before()), "after", side(c.after()),
                "vehicle", c.vehicle().stream().map(ComparisonJson::fact).toList(),
                "added", c.added().stream().map(this::named).toList(),
                "gone", c.gone().stream().map(this::named).toList(),
                "changed", c.changed().stream().map(this::changed).toList(),
                "aims", c.aims().stream().map(ComparisonJson::aim).toList());
    }

    private Map<String, Object> side(Side side) {
        return Json.object("title", side.title(), "survey", side.survey().survey(),
                "mass", JsonValues.quantity(side.mass(), Dimension.MASS),
                "price", JsonValues.money(side.price(), currency));
    }

    private Map<String, Object> named(PanelSide panel) {
        Map<String, Object> object = Json.object("panel", panel.name());
        object.putAll(outcome(panel));
        return object;
    }

    private Map<String, Object> outcome(PanelSide panel) {
        return Json.object("verdict", panel.verdict().map(Words::of), "layup", PanelJson.layup(panel.layup()),
                "price", JsonValues.money(panel.layup().price(), currency),
                "leftOut", panel.leftOut().stream().map(PanelJson::leftOut).toList(),
                "wallMeasured", panel.effect().wallMeasured());
    }

    private Map<String, Object> changed(PanelChange c) {
        return Json.object("panel", c.name(), "treatedOtherwise", c.isOutcome(), "before", outcome(c.before()),
                "after", outcome(c.after()), "facts", c.facts().stream().map(ComparisonJson::fact).toList(),
                "nowSaid", c.nowSaid().stream().map(j -> JsonValues.judgement(j, sentences)).toList(),
                "nowQuiet", c.nowQuiet().stream().map(j -> JsonValues.judgement(j, sentences)).toList(),
                "effects", c.effects().stream().map(ComparisonJson::effect).toList());
    }

    private static Map<String, Object> fact(FactChange f) {
        return Json.object("key", f.key(), "before", f.before(), "after", f.after());
    }

    private static Map<String, Object> aim(AimChange a) {
        return Json.object("aim", Words.of(a.aim()),
                "effects", a.effects().stream().map(ComparisonJson::effect).toList());
    }

    private static Map<String, Object> effect(EffectChange e) {
        return Json.object("kind", Words.of(e.kind()), "at", e.at().isEmpty() ? null : e.at(),
                "unit", e.kind().unit(), "before", number(e, e.before()), "after", number(e, e.after()));
    }

    private static Object number(EffectChange effect, OptionalDouble si) {
        return si.isEmpty() ? null : Json.number(effect.kind().dimension().shownIn().fromSi(si.getAsDouble()));
    }
}
