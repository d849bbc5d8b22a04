package unthrum.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import unthrum.cutting.CutRule;
import unthrum.cutting.Placement;
import unthrum.cutting.SheetLayout;
import unthrum.pieces.Clearing;
import unthrum.pieces.Clearing.Way;
import unthrum.pieces.CutPiece;
import unthrum.pieces.CutPlan;
import unthrum.pieces.Line;
import unthrum.pieces.Lying;
import unthrum.pieces.MaterialCut;
import unthrum.pieces.OnSite;
import unthrum.pieces.Shortfall;
import unthrum.pieces.Supplies;
import unthrum.reading.Dimension;
import unthrum.reading.Words;

/** Pieces and layouts as JSON, complete, by the published schema {@code unthrum/cut.schema.json}. Lengths in mm. */
public final class CutJson {

    /** Goes up when a program that reads the JSON would have to change. */
    private static final int FORMAT = 1;

    private CutJson() {
    }

    public static String of(CutPlan plan) {
        return Json.write(Json.object("format", FORMAT, "kind", "cut", "survey", plan.plan().survey().survey(),
                "guillotine", plan.wishes().cuts() == CutRule.GUILLOTINE,
                "seed", String.valueOf(plan.wishes().seed()),
                "materials", plan.cuts().stream().map(c -> material(c, currency(plan))).toList(),
                "onSite", plan.onSite().stream().map(CutJson::onSite).toList(),
                "shortfalls", plan.shortfalls().stream().map(s -> shortfall(s, currency(plan))).toList(),
                "supplies", supplies(plan.supplies(), currency(plan)),
                "mass", JsonValues.quantity(plan.mass(), Dimension.MASS),
                "price", JsonValues.money(plan.price(), currency(plan))));
    }

    private static String currency(CutPlan plan) {
        return plan.plan().totals().currency();
    }

    private static Map<String, Object> material(MaterialCut cut, String currency) {
        Map<String, CutPiece> pieces = cut.byName();
        return Json.object("material", cut.material().material(),
                "pieces", cut.pieces().stream().map(CutJson::piece).toList(),
                "sheets", cut.layout().sheets().stream().map(s -> sheet(s, pieces)).toList(),
                "provedLeast", cut.layout().provedLeast(),
                "fromShelf", cut.shelf(), "bought", cut.bought(), "packs", cut.packs(),
                "price", JsonValues.money(cut.price(), currency),
                "mass", JsonValues.quantity(cut.mass(), Dimension.MASS),
                "waste", JsonValues.quantity(cut.waste(), Dimension.SHARE),
                "offcut", JsonValues.quantity(cut.offcut(), Dimension.AREA));
    }

    private static Map<String, Object> piece(CutPiece piece) {
        return Json.object("number", piece.number(), "place", JsonValues.place(piece.place()),
                "along", piece.box().along(), "across", piece.box().across(),
                "length", piece.box().length(), "width", piece.box().width(), "mirrored", piece.mirrored(),
                "area", JsonValues.quantity(piece.area(), Dimension.AREA),
                "cutOuts", piece.clearings().stream().map(CutJson::clearing).toList(),
                "lines", piece.lines().stream().map(CutJson::line).toList(),
                "relief", piece.relief().map(r -> Json.object("aSide", r.aSide(), "depth", r.depth(), "lap", r.lap())));
    }

    private static Map<String, Object> line(Line l) {
        return Json.object("kind", Words.of(l.kind()),
                "from", List.of(Json.number(l.fromAlong()), Json.number(l.fromAcross())),
                "to", List.of(Json.number(l.toAlong()), Json.number(l.toAcross())));
    }

    private static Map<String, Object> clearing(Clearing c) {
        return Json.object("of", c.place().part(), "along", Json.number(c.along()), "across", Json.number(c.across()),
                "length", Json.number(c.length()), "width", Json.number(c.width()),
                "round", c.round(), "lid", c.isLid(), "keyhole", c.isKeyhole());
    }

    private static Map<String, Object> sheet(SheetLayout sheet, Map<String, CutPiece> pieces) {
        return Json.object("from", Words.of(sheet.stock().kind()), "name", sheet.stock().name(),
                "width", tenths(sheet.stock().width()), "height", tenths(sheet.stock().height()),
                "usedHeight", tenths(sheet.usedHeight()),
                "pieces", sheet.placements().stream().map(p -> placed(pieces.get(p.piece()), p)).toList());
    }

    private static Map<String, Object> placed(CutPiece piece, Placement p) {
        Lying lying = new Lying(piece, p);
        List<Object> outlines = new ArrayList<>();
        lying.outlines().forEach(ring -> outlines.add(
                ring.stream().map(at -> List.of(Json.number(at.right()), Json.number(at.up()))).toList()));
        return Json.object("number", piece.number(), "right", tenths(p.x()), "up", tenths(p.y()),
                "width", tenths(p.width()), "height", tenths(p.height()), "outlines", outlines,
                "lines", lying.lines().stream().map(l -> Json.object("kind", Words.of(l.line().kind()),
                        "from", List.of(Json.number(l.from().right()), Json.number(l.from().up())),
                        "to", List.of(Json.number(l.to().right()), Json.number(l.to().up())))).toList());
    }

    private static Object tenths(int length) {
        return Json.number(length / 10.0);
    }

    private static Map<String, Object> onSite(OnSite o) {
        return Json.object("place", JsonValues.place(o.place()), "count", o.count(),
                "clear", Double.isNaN(o.clear()) ? null : JsonValues.quantity(o.clear(), Dimension.LENGTH),
                "lid", o.way() == Way.LID, "keyhole", o.way() == Way.KEYHOLE);
    }

    private static Map<String, Object> shortfall(Shortfall s, String currency) {
        return Json.object("material", s.material().material(),
                "pieces", s.pieces().stream().map(CutPiece::number).toList(), "tooLarge", s.tooLarge(),
                "packs", s.packs(), "price", JsonValues.money(s.price(), currency),
                "says", CutWords.shortfall(s, currency));
    }

    private static Map<String, Object> supplies(Supplies s, String currency) {
        return Json.object("contactAdhesive", litres(s.adhesive()), "hotContactAdhesive", litres(s.hotAdhesive()),
                "cleaner", litres(s.cleaner()), "solvent", litres(s.solvent()),
                "tape", JsonValues.quantity(s.tape(), Dimension.LENGTH),
                "taping", s.taping().map(t -> Json.object("material", t.material().material(), "packs", t.packs(),
                        "price", JsonValues.money(t.price(), currency))),
                "closers", s.closers().stream().map(c -> Json.object("material", c.material().material(),
                        "hole", JsonValues.quantity(c.size(), Dimension.LENGTH), "count", c.count())).toList());
    }

    private static Map<String, Object> litres(double litres) {
        return Json.object("value", Json.number(litres), "unit", "l");
    }
}
