package unthrum.plan;

import java.util.List;
import unthrum.knowledge.Knowledge;
import unthrum.reasoning.Options;

/** Which of a panel's offers serve as well as its best one, as far as a fitter or a client could tell. */
final class AlikeOffers {

    private final double tell;
    private final double part;

    AlikeOffers(Knowledge knowledge) {
        this.tell = knowledge.number("tell/alike");
        this.part = knowledge.number("tell/alike-part");
    }

    /** What the best of them brings, laid whole; 0 when there is none. */
    static double best(List<Options.Offer> offers) {
        return offers.stream().mapToDouble(Options.Offer::whole).max().orElse(0);
    }

    List<Options.Offer> of(List<Options.Offer> offers) {
        double best = best(offers);
        return offers.stream().filter(o -> isAlike(o, best)).toList();
    }

    boolean isAlike(Options.Offer offer, double best) {
        return offer.whole() > 0 && offer.whole() >= best - Math.min(tell, part * best);
    }
}
