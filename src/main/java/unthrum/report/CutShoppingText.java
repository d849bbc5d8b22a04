package unthrum.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import unthrum.pieces.CutPlan;
import unthrum.pieces.MaterialCut;
import unthrum.pieces.Supplies;
import unthrum.plan.Purchase;
import unthrum.reading.Dimension;
import unthrum.report.Page.Align;
import unthrum.report.Page.Column;
import unthrum.report.Page.Row;

/** What the layouts take: from the shelf, to buy, price, mass and waste; and what the work takes besides. */
final class CutShoppingText {

    private static final int LABELS = 18;

    private final CutPlan plan;
    private final String currency;

    CutShoppingText(CutPlan plan) {
        this.plan = plan;
        this.currency = plan.plan().totals().currency();
    }

    void print(Page page) {
        page.heading("Shopping by layout");
        List<Row> rows = new ArrayList<>();
        plan.cuts().forEach(c -> rows.add(row(c)));
        closers().forEach(p -> rows.add(new Row(List.of(p.material().material(), English.count(p.pieces(), "piece"),
                packs(p.packs()), money(p.packs(), p.price()), "–", "–"))));
        plan.supplies().taping().ifPresent(t -> rows.add(new Row(List.of(t.material().material(),
                CutWords.metres(plan.supplies().tape()), packs(t.packs()), money(t.packs(), t.price()), "–", "–"))));
        page.table(0, List.of(new Column("material", Align.LEFT), new Column("cut from", Align.ELASTIC),
                new Column("to buy", Align.RIGHT), new Column("price", Align.RIGHT), new Column("kg", Align.RIGHT),
                new Column("waste", Align.RIGHT)), rows);
        page.blank();
        plan.cuts().forEach(c -> beyondThePlan(page, c));
        besides(page);
        totals(page);
    }

    private Row row(MaterialCut cut) {
        String shelf = cut.shelf() > 0 ? ", " + cut.shelf() + " from the shelf" : "";
        return new Row(List.of(cut.material().material(), CutWords.used(cut) + shelf, packs(cut.packs()),
                money(cut.packs(), cut.price()), Amounts.kilograms(cut.mass()), Amounts.share(cut.waste())));
    }

    /** The plan reckons with net areas; says where cutting takes more. */
    private void beyondThePlan(Page page, MaterialCut cut) {
        int planned = plan.plan().shopping().stream().filter(p -> p.material().equals(cut.material()))
                .mapToInt(Purchase::packs).sum();
        if (cut.packs() > planned) {
            page.paragraph(0, "Cutting takes " + English.count(cut.packs() - planned, "pack") + " more of "
                    + cut.material().material() + " than the plan's net area.");
            page.blank();
        }
    }

    private static String packs(int packs) {
        return packs == 0 ? "–" : English.count(packs, "pack");
    }

    private String money(int packs, double price) {
        return packs == 0 ? "–" : Amounts.money(price, currency);
    }

    private List<Purchase> closers() {
        return plan.plan().shopping().stream().filter(p -> p.pieces() > 0).toList();
    }

    private void besides(Page page) {
        Supplies s = plan.supplies();
        Entries entries = new Entries();
        s.closers().forEach(c -> entries.add("for holes", c.count() + " of " + c.material().material() + " for "
                + Dimension.LENGTH.show(c.size()) + (c.count() == 1 ? " (one hole)" : "")));
        litres(entries, "contact adhesive", s.adhesive(), "ordinary, both faces");
        litres(entries, "contact adhesive", s.hotAdhesive(), "high-temperature, both faces");
        litres(entries, "cleaner", s.cleaner(), "water-based, ready mixed");
        litres(entries, "solvent", s.solvent(), "for the last wipe");
        if (!entries.isEmpty()) {
            page.paragraph(0, "Besides, amounts from memory and without a price:");
            entries.print(page, 0, LABELS);
            page.blank();
        }
    }

    /** In steps of a tenth of a litre, and never less than is needed. */
    private static void litres(Entries entries, String what, double litres, String kind) {
        if (litres > 0) {
            double tenths = Math.ceil(litres * 10) / 10;
            entries.add(what, String.format(Locale.ROOT, "%.1f litres, %s.", tenths, kind));
        }
    }

    private void totals(Page page) {
        double price = plan.price() + closers().stream().mapToDouble(Purchase::price).sum();
        double tape = plan.supplies().price();
        page.paragraph(0, "Mass of all pieces: " + Amounts.mass(plan.mass()) + ". To buy: "
                + Amounts.money(price, currency) + (tape > 0 ? ", tape for " + Amounts.money(tape, currency)
                + " among it" : "") + limit(price) + ". The plan shares the money among sheets, rolls and what closes"
                + " holes; tape, adhesive, cleaner and solvent come on top.");
    }

    private String limit(double price) {
        var totals = plan.plan().totals();
        return totals.moneyLimit().map(m -> "; the client has " + Amounts.money(m) + (!totals.moneyComparable()
                ? ", which cannot be held against prices in " + currency
                : price > m.amount().doubleValue() ? ", so " + Amounts.money(price - m.amount().doubleValue(), currency)
                + " more is to be agreed first" : "")).orElse("");
    }
}
