package unthrum.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import unthrum.plan.Plan;
import unthrum.plan.Purchase;
import unthrum.plan.Totals;
import unthrum.reading.Quantity;
import unthrum.report.Page.Align;
import unthrum.report.Page.Column;
import unthrum.report.Page.Row;

/** What to buy, what the shelf gives, and what it all adds up to. */
final class ShoppingText {

    /** From so many columns on there is room to say what each material is. */
    private static final int WIDE = 100;

    private final Plan plan;

    ShoppingText(Plan plan) {
        this.plan = plan;
    }

    void print(Page page) {
        page.heading("Shopping and totals");
        if (plan.shopping().isEmpty()) {
            page.paragraph(0, "Nothing to buy.");
        } else {
            boolean wide = page.width() >= WIDE;
            List<Column> columns = new ArrayList<>(List.of(new Column("material", Align.LEFT),
                    new Column("needed", Align.RIGHT), new Column("from shelf", Align.RIGHT),
                    new Column("to buy", Align.RIGHT), new Column("price", Align.RIGHT)));
            if (wide) {
                columns.add(1, new Column("what it is", Align.ELASTIC));
            }
            page.table(0, columns, plan.shopping().stream().map(p -> row(p, wide)).toList());
            page.paragraph(0, "Areas are net: what is lost in cutting comes on top, and so do tape, adhesive,"
                    + " cleaner and solvent.");
        }
        page.blank();
        totals().forEach(line -> page.paragraph(0, line));
    }

    private Row row(Purchase p, boolean wide) {
        boolean byPiece = p.pieces() > 0;
        List<String> cells = new ArrayList<>(List.of(p.material().material(),
                byPiece ? English.count(p.pieces(), "piece") : Amounts.area(p.area()),
                p.shelf() <= 0 ? "–" : byPiece ? English.count((int) p.shelf(), "piece")
                        : Amounts.area(p.shelf()),
                p.packs() == 0 ? "–" : English.count(p.packs(), "pack"),
                p.packs() == 0 ? "–" : Amounts.money(p.price(), plan.totals().currency())));
        if (wide) {
            cells.add(1, p.material().is());
        }
        return new Row(cells);
    }

    private List<String> totals() {
        Totals t = plan.totals();
        List<String> lines = new ArrayList<>();
        lines.add("Mass added: " + Amounts.mass(t.mass()) + against(t.massLimit(), "the client allows")
                + against(t.payload(), "the payload leaves room for") + ".");
        if (t.roof() > 0 || t.roofLimit().isPresent()) {
            lines.add("Of it on roofs: " + Amounts.mass(t.roof()) + against(t.roofLimit(), "the client allows") + ".");
        }
        String money = t.moneyLimit().map(m -> "; the client has " + Amounts.money(m)
                + (t.moneyComparable() ? "" : ", which cannot be held against prices in " + t.currency())).orElse("");
        lines.add("To buy: " + Amounts.money(t.price(), t.currency()) + money + ".");
        return lines;
    }

    private static String against(Optional<Quantity> limit, String who) {
        return limit.map(l -> "; " + who + " " + Amounts.mass(l.si())).orElse("");
    }
}
