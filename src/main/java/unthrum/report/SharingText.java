package unthrum.report;

import java.util.List;
import java.util.stream.IntStream;
import unthrum.effect.VehicleEffect;
import unthrum.material.Layer;
import unthrum.plan.Plan;
import unthrum.plan.Proof;
import unthrum.plan.Shares;
import unthrum.plan.Shares.LeftOver;
import unthrum.plan.Shares.NextPack;
import unthrum.plan.Shares.Ranked;
import unthrum.report.Page.Align;
import unthrum.report.Page.Column;
import unthrum.report.Page.Row;

/** Where something is short: how sure the sharing is, who goes short, what one more pack would do, what is left. */
final class SharingText {

    /** As many of each kind as a reader takes in. */
    private static final int FEW = 5;

    private static final int SHORT_ROWS = 12;

    /** Smaller pieces than this, m², are scrap. Common practice, no source. */
    private static final double SCRAP = 0.05;

    private final Shares shares;
    private final String currency;
    private final VehicleEffect.Least least;
    private final PlaceNames names = PlaceNames.anywhere();

    SharingText(Plan plan) {
        this.shares = plan.shares();
        this.currency = plan.totals().currency();
        this.least = plan.effects().vehicle().least();
    }

    void print(Page page) {
        if (shares.proof().standing() == Proof.Standing.NOTHING_SHORT || shares.ranking().isEmpty()) {
            return;
        }
        page.heading("Sharing what there is");
        page.paragraph(0, proof(shares.proof()));
        List<Integer> wanting = IntStream.range(0, shares.ranking().size())
                .filter(i -> shares.ranking().get(i).served() < 1).boxed().toList();
        if (!wanting.isEmpty()) {
            page.table(0, List.of(new Column("rank", Align.RIGHT), new Column("goes short", Align.ELASTIC),
                    new Column("of", Align.ELASTIC), new Column("served", Align.RIGHT)),
                    wanting.stream().limit(SHORT_ROWS).map(this::row).toList());
        }
        page.paragraph(0, served(wanting.size()));
        List<NextPack> worth = shares.nextPacks().stream().filter(this::isWorthIt).toList();
        worth.stream().limit(FEW).forEach(pack -> page.bullet(0, nextPack(pack)));
        if (worth.isEmpty() && !shares.nextPacks().isEmpty()) {
            page.paragraph(0, "No further pack is worth its money. " + nextPack(shares.nextPacks().get(0)));
        }
        List<LeftOver> left = shares.leftOvers().stream().filter(SharingText::isWorthKeeping).toList();
        if (!left.isEmpty()) {
            page.paragraph(0, "Left over: " + English.and(left.stream().map(this::leftOver).toList()) + ".");
        }
        page.blank();
    }

    static String proof(Proof proof) {
        return switch (proof.standing()) {
            case NOTHING_SHORT -> throw new IllegalStateException("nothing is shared");
            case PROVED_BEST -> proof.isMost() ? "No other way of sharing brings more: proved."
                    : "No other way of sharing would take more than another " + GainWords.share(proof.open()) + " "
                            + GainWords.ALL + ": proved.";
            case BEST_FOUND -> proof.isMost()
                    ? "No other way of sharing brings more: proved. One that brings as much may cost or weigh less; "
                            + "the time given was up before all were tried."
                    : "The best found in the time given. " + another(proof);
            case BY_RANK -> "Shared by rank alone, since the exact search does not run on this computer. "
                    + another(proof);
        };
    }

    private static String another(Proof proof) {
        return proof.served() == 0 ? "Another way might bring something."
                : "Another way could bring up to " + Amounts.share(proof.gap()) + " more.";
    }

    private Row row(int index) {
        Ranked ranked = shares.ranking().get(index);
        return new Row(List.of(String.valueOf(index + 1), names.of(ranked.place()), English.and(ranked.materials().stream().map(m -> m.material()).toList()),
                ranked.served() == 0 ? "–" : Amounts.share(ranked.served())));
    }

    private String served(int wanting) {
        int places = shares.ranking().size();
        String more = wanting > SHORT_ROWS ? " " + English.capital(English.count(wanting - SHORT_ROWS, "place"))
                + " further down " + (wanting - SHORT_ROWS == 1 ? "goes" : "go") + " short too." : "";
        return wanting == 0 ? English.count(places, "place") + " ranked by what each brings, all of them served in full."
                : English.count(places, "place") + " ranked by what each brings; " + (places - wanting)
                + " served in full." + more;
    }

    private String nextPack(NextPack pack) {
        return "One more pack of " + pack.material().material() + " (" + Amounts.money(pack.price(), currency)
                + ") would take " + GainWords.share(pack.brings()) + " more " + GainWords.ALL + ", first on "
                + names.of(pack.places().get(0)) + ".";
    }

    private boolean isWorthIt(NextPack pack) {
        return pack.brings() >= pack.price() * least.money();
    }

    private static boolean isWorthKeeping(LeftOver left) {
        return left.material().layer() != Layer.SEAL && left.amount() >= SCRAP;
    }

    private String leftOver(LeftOver left) {
        return Amounts.area(left.amount()) + " of " + left.material().material()
                + left.next().map(p -> " (" + names.of(p) + " could use some)").orElse("");
    }
}
