package unthrum.plan;

import java.util.List;
import unthrum.effect.VehicleAccount;
import unthrum.knowledge.Knowledge;
import unthrum.reasoning.Options;

/** Which of a panel's offers serve as well as its best one, as far as a fitter or a client could tell. */
final class AlikeOffers {

    private final double tell;
    private final double part;
    private final double perMoney;

    AlikeOffers(Knowledge knowledge, VehicleAccount account) {
        this.tell = knowledge.number("tell/alike");
        this.part = knowledge.number("tell/alike-part");
        this.perMoney = account.leastForMoney();
    }

    /** What the best of them brings, laid whole; 0 when there is none. */
    static double best(List<Options.Offer> offers) {
        return offers.stream().mapToDouble(Options.Offer::whole).max().orElse(0);
    }

    /** Those that serve as well as the best, where everything is paid by its area, as it is where nothing is shared. */
    List<Options.Offer> paid(List<Options.Offer> offers) {
        double best = offers.stream().mapToDouble(this::paid).max().orElse(0);
        return offers.stream().filter(o -> paid(o) > 0 && paid(o) >= best - Math.min(tell, part * best)).toList();
    }

    private double paid(Options.Offer offer) {
        return offer.whole() - perMoney * offer.layup().price();
    }

    boolean isAlike(Options.Offer offer, double best) {
        return offer.whole() > 0 && offer.whole() >= best - Math.min(tell, part * best);
    }
}
