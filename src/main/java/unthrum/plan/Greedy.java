package unthrum.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import unthrum.plan.SharingProblem.Bounds;
import unthrum.plan.SharingProblem.Hole;
import unthrum.plan.SharingProblem.Offer;
import unthrum.plan.SharingProblem.Room;
import unthrum.plan.SharingProblem.Use;

/**
 * Shares by rank alone: what safety asks for, then always what brings most, as long as it fits. The exact search
 * starts from here, and where it cannot run this is the answer.
 */
final class Greedy {

    private final SharingProblem problem;
    private final List<Claim> ranked = new ArrayList<>();
    private Allotment allotment;

    /** An offer on a panel, or a hole of it. */
    private record Claim(int room, int offer, int hole, long worth) {
    }

    private Greedy(SharingProblem problem) {
        this.problem = problem;
        this.allotment = Allotment.nothing(problem);
        for (int room = 0; room < problem.rooms().size(); room++) {
            Room of = problem.rooms().get(room);
            for (int i = 0; i < of.offers().size(); i++) {
                ranked.add(new Claim(room, i, -1, of.offers().get(i).worth(of.offers().get(i).whole())));
            }
            for (int h = 0; h < of.holes().size(); h++) {
                ranked.add(new Claim(room, Allotment.BARE, h, of.holes().get(h).worth()));
            }
        }
        ranked.sort(Comparator.comparingLong(Claim::worth).reversed());
    }

    static Allotment share(SharingProblem problem) {
        Greedy greedy = new Greedy(problem);
        greedy.laySafety();
        greedy.fill(problem.bounds().atLeast(greedy.allotment.use()));
        return greedy.allotment;
    }

    /** The same allotment with all that still fits and is worth its weight and money. */
    static Allotment filled(SharingProblem problem, Allotment allotment) {
        Greedy greedy = new Greedy(problem);
        greedy.allotment = allotment;
        greedy.fill(problem.bounds().atLeast(allotment.use()));
        return greedy.allotment;
    }

    /** What goes least beyond the bounds, then what brings most. */
    private void laySafety() {
        for (int room = 0; room < problem.rooms().size(); room++) {
            Room of = problem.rooms().get(room);
            for (int h = 0; h < of.holes().size(); h++) {
                allotment = of.holes().get(h).required() ? allotment.closing(room, h) : allotment;
            }
            if (of.required()) {
                int at = room;
                Allotment before = allotment;
                allotment = IntStream.range(0, of.offers().size())
                        .mapToObj(i -> before.with(at, i, of.offers().get(i).least())).filter(a -> a.fits(at))
                        .min(Comparator.comparingLong(Greedy::beyond).thenComparing(Allotment::worth, Comparator.reverseOrder()))
                        .orElseThrow();
            }
        }
    }

    private static long beyond(Allotment allotment) {
        Use excess = allotment.excess();
        return excess.money() + excess.mass() + excess.roof();
    }

    /** Again and again until nothing better fits. */
    private void fill(Bounds bounds) {
        boolean more = true;
        while (more) {
            more = false;
            for (Claim claim : ranked) {
                Optional<Allotment> tried = claim.hole < 0
                        ? laid(problem, allotment, claim.room, claim.offer, a -> bounds.admit(a.use())) : closed(claim, bounds);
                if (tried.isPresent() && tried.get().net() > allotment.net()) {
                    allotment = tried.get();
                    more = true;
                }
            }
        }
    }

    private Optional<Allotment> closed(Claim claim, Bounds bounds) {
        Hole hole = problem.rooms().get(claim.room).holes().get(claim.hole);
        return Optional.of(claim).filter(c -> !allotment.closes(c.room, c.hole) && hole.worth() > 0)
                .map(c -> allotment.closing(c.room, c.hole)).filter(a -> bounds.admit(a.use()));
    }

    /** As much of an offer as is admitted, where that is worth more than what lies there. */
    static Optional<Allotment> laid(SharingProblem problem, Allotment from, int room, int index,
                                    Predicate<Allotment> admits) {
        Offer offer = problem.rooms().get(room).offers().get(index);
        if (offer.worth(offer.whole()) <= from.worth(room)) {
            return Optional.empty();
        }
        Predicate<Allotment> fits = a -> a.fits(room) && admits.test(a);
        Allotment whole = from.with(room, index, offer.whole());
        Allotment laid = fits.test(whole) ? whole : from.with(room, index, offer.least());
        if (laid != whole) {
            if (!fits.test(laid)) {
                return Optional.empty();
            }
            for (int j : inRank(offer)) {
                laid = pieces(laid, room, index, j, offer.part(j).steps().size(), fits);
            }
        }
        return Optional.of(laid).filter(a -> a.worth(room) > from.worth(room));
    }

    private static int[] inRank(Offer offer) {
        return IntStream.range(0, offer.damping().parts().size()).boxed()
                .sorted(Comparator.comparingLong(j -> -offer.part(j).whole().worth())).mapToInt(j -> j).toArray();
    }

    private static Allotment pieces(Allotment from, int room, int index, int part, int most, Predicate<Allotment> fits) {
        int[] pieces = from.pieces(room);
        for (int n = most; n > from.pieces(room)[part]; n--) {
            pieces[part] = n;
            Allotment tried = from.with(room, index, pieces.clone());
            if (fits.test(tried)) {
                return tried;
            }
        }
        return from;
    }
}
