package unthrum.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import unthrum.plan.SharingProblem.Damping;
import unthrum.plan.SharingProblem.Goods;
import unthrum.plan.SharingProblem.Offer;
import unthrum.plan.SharingProblem.Part;
import unthrum.plan.SharingProblem.Room;
import unthrum.plan.SharingProblem.Take;

/**
 * Leaves out what another one beats whatever else is laid, so that the search loses nothing. An offer is out when
 * another of the same panel is worth as much at every number of pieces, takes no more of any material, is no heavier
 * and no thicker. A material is out when another beats it everywhere: a pack holds as much, costs no more and has to
 * bring no more, and for every offer with the one there is as good an offer with the other in its stead. What lies on
 * the shelf always stays.
 */
final class Dominance {

    private final SharingProblem problem;

    private Dominance(SharingProblem problem) {
        this.problem = problem;
    }

    static SharingProblem pruned(SharingProblem problem) {
        SharingProblem few = offersPruned(problem);
        for (int g = 0; g < few.goods().size(); g++) {
            few = new Dominance(few).withoutBeaten(g);
        }
        return few;
    }

    private static SharingProblem offersPruned(SharingProblem problem) {
        return new SharingProblem(problem.rooms().stream().map(room -> {
            List<Offer> kept = new ArrayList<>();
            for (Offer offer : room.offers()) {
                if (kept.stream().noneMatch(k -> beats(k, offer, -1, -1))) {
                    kept.removeIf(k -> beats(offer, k, -1, -1));
                    kept.add(offer);
                }
            }
            return with(room, kept);
        }).toList(), problem.goods(), problem.bounds());
    }

    private static Room with(Room room, List<Offer> offers) {
        return new Room(room.panel(), room.roof(), room.mass(), room.required(), offers, room.holes());
    }

    private SharingProblem withoutBeaten(int goods) {
        boolean closes = problem.rooms().stream().flatMap(r -> r.holes().stream()).anyMatch(h -> h.goods() == goods);
        boolean stays = closes || problem.goods().get(goods).shelf() > 0
                || IntStream.range(0, problem.goods().size()).noneMatch(o -> o != goods && beats(o, goods));
        return stays ? problem : new SharingProblem(problem.rooms().stream()
                .map(r -> with(r, r.offers().stream().filter(o -> !o.uses(goods)).toList())).toList(),
                problem.goods(), problem.bounds());
    }

    private boolean beats(int better, int worse) {
        Goods a = problem.goods().get(better);
        Goods b = problem.goods().get(worse);
        return a.material().layer() == b.material().layer() && a.price() <= b.price() && a.pack() >= b.pack()
                && a.asks() <= b.asks()
                && problem.rooms().stream().allMatch(room -> room.offers().stream().filter(o -> o.uses(worse))
                        .allMatch(o -> room.offers().stream()
                                .anyMatch(other -> !other.uses(worse) && beats(other, o, better, worse))));
    }

    /** Whether an offer is as good as another, were the better goods laid there in the worse one's stead. */
    private static boolean beats(Offer better, Offer worse, int goods, int instead) {
        return better.thickness() <= worse.thickness() && mass(better) <= mass(worse)
                && takesNoMore(better, worse, goods, instead)
                && dampsAsWell(better, worse, worse.damping().goods() == instead ? goods : worse.damping().goods());
    }

    private static long mass(Offer offer) {
        return offer.cover().stream().mapToLong(Take::mass).sum();
    }

    private static boolean takesNoMore(Offer better, Offer worse, int goods, int instead) {
        Map<Integer, Long> areas = new HashMap<>();
        worse.cover().forEach(t -> areas.merge(t.goods() == instead ? goods : t.goods(), t.area(), Long::sum));
        return better.cover().stream().allMatch(t -> t.area() <= areas.getOrDefault(t.goods(), 0L));
    }

    /** Pieces are held against as many pieces; a better offer without damping against all that the worse one's brings. */
    private static boolean dampsAsWell(Offer better, Offer worse, int goods) {
        Damping a = better.damping();
        Damping b = worse.damping();
        long more = better.worth() - worse.worth();
        if (b.parts().isEmpty() || a.parts().isEmpty()) {
            return a.parts().stream().noneMatch(Part::required) && more + b.parts().stream().mapToLong(p ->
                    Math.min(0, p.steps().stream().mapToLong(s -> -s.worth()).min().orElseThrow())).sum() >= 0;
        }
        return a.goods() == goods && a.parts().size() == b.parts().size()
                && IntStream.range(0, a.parts().size()).allMatch(j -> isNoHeavier(a.parts().get(j), b.parts().get(j)))
                && more + IntStream.range(0, a.parts().size())
                        .mapToLong(j -> least(a.parts().get(j), b.parts().get(j))).sum() >= 0;
    }

    private static boolean isNoHeavier(Part a, Part b) {
        return a.steps().size() == b.steps().size() && (b.required() || !a.required())
                && IntStream.rangeClosed(1, a.steps().size()).allMatch(n -> a.at(n).area() <= b.at(n).area()
                        && a.at(n).mass() <= b.at(n).mass());
    }

    /** What the one is worth more than the other at the number of pieces where that is least. */
    private static long least(Part a, Part b) {
        return IntStream.rangeClosed(b.required() ? b.steps().size() : 0, a.steps().size())
                .mapToLong(n -> a.at(n).worth() - b.at(n).worth()).min().orElseThrow();
    }
}
