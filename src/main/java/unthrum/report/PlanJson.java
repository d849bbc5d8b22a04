package unthrum.report;

import java.util.Collection;
import java.util.Map;
import unthrum.plan.Plan;
import unthrum.plan.Purchase;
import unthrum.plan.Totals;
import unthrum.reading.Dimension;
import unthrum.reading.Money;
import unthrum.reading.Quantity;
import unthrum.reading.Words;

/** A plan as JSON, complete, by the published schema {@code unthrum/plan.schema.json}. */
public final class PlanJson {

    /** Goes up when a program that reads the JSON would have to change. */
    static final int FORMAT = 1;

    private PlanJson() {
    }

    /** @param panels those to give; all when empty */
    public static String of(Plan plan, Collection<String> panels) {
        Sentences sentences = new Sentences(PlaceNames.anywhere());
        return Json.write(Json.object("format", FORMAT, "kind", "plan", "survey", plan.survey().survey(),
                "vehicle", vehicle(plan),
                "aims", plan.survey().aims().stream().map(Words::of).toList(),
                "panels", plan.panels().stream().filter(p -> panels.isEmpty() || panels.contains(p.name()))
                        .map(p -> new PanelJson(p, plan.effects().panel(p.name()).orElseThrow()).object()).toList(),
                "wholeJob", plan.forAll().stream().map(j -> JsonValues.judgement(j, sentences)).toList(),
                "shopping", plan.shopping().stream().map(p -> purchase(p, plan.totals().currency())).toList(),
                "totals", totals(plan.totals()),
                "sharing", RecordJson.object(plan.shares()),
                "effects", RecordJson.object(plan.effects().vehicle())));
    }

    private static Map<String, Object> vehicle(Plan plan) {
        var vehicle = plan.survey().vehicle();
        return Json.object("body", Words.of(vehicle.body()), "drive", Words.of(vehicle.drive()),
                "use", vehicle.use().stream().map(Words::of).toList(), "year", vehicle.year());
    }

    private static Map<String, Object> purchase(Purchase p, String currency) {
        return Json.object("material", p.material().material(),
                "area", p.pieces() > 0 ? null : JsonValues.quantity(p.area(), Dimension.AREA),
                "pieces", p.pieces() > 0 ? p.pieces() : null,
                "fromShelf", p.pieces() > 0 ? Json.object("value", Json.number(p.shelf()))
                        : JsonValues.quantity(p.shelf(), Dimension.AREA), "packs", p.packs(),
                "price", JsonValues.money(p.price(), currency));
    }

    private static Map<String, Object> totals(Totals t) {
        return Json.object("mass", JsonValues.quantity(t.mass(), Dimension.MASS),
                "massLimit", t.massLimit().map(PlanJson::quantity),
                "roofMass", JsonValues.quantity(t.roof(), Dimension.MASS),
                "roofLimit", t.roofLimit().map(PlanJson::quantity),
                "payloadRoom", t.payload().map(PlanJson::quantity),
                "price", JsonValues.money(t.price(), t.currency()),
                "moneyLimit", t.moneyLimit()
                        .map((Money m) -> JsonValues.money(m.amount().doubleValue(), m.currency())));
    }

    private static Map<String, Object> quantity(Quantity quantity) {
        return JsonValues.quantity(quantity.si(), quantity.dimension());
    }
}
