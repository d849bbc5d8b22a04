package unthrum.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import unthrum.effect.Laid;
import unthrum.effect.Patch;
import unthrum.facts.Place;
import unthrum.material.Layer;
import unthrum.plan.SharingProblem.Hole;
import unthrum.plan.SharingProblem.Offer;
import unthrum.plan.SharingProblem.Part;
import unthrum.plan.SharingProblem.Room;
import unthrum.plan.SharingProblem.Take;

/**
 * What a place gets, or would get if there were enough.
 *
 * @param layers what lies there when it is wholly served
 * @param worth  of that
 * @param given  of what the plan lays there
 * @param share  of it that the plan lays, 0 to 1
 * @param more   the plan, but with the next piece of it
 */
record Claim(int room, Place place, List<Laid> layers, long worth, long given, double share, Allotment more) {

    static final Comparator<Claim> BY_WORTH = Comparator.comparingLong(Claim::worth).reversed()
            .thenComparing(Claim::area, Comparator.reverseOrder()).thenComparing(Claim::place)
            .thenComparing(c -> c.layers.get(0).layer());

    double area() {
        return layers.get(0).area();
    }

    boolean closesAHole() {
        return layers.get(0).layer() == Layer.SEAL;
    }

    /** The part of the patches that the plan lays, or leaves. */
    static Patch of(Patch whole, double share) {
        return new Patch(whole.place(), whole.coverage() * share, whole.area() * share);
    }

    /**
     * What a panel claims: what the plan gives it, and the layers of the offer that it would get by itself, where that
     * one brings more.
     */
    static List<Claim> of(SharingProblem problem, Allotment plan, int room, OptionalInt advised) {
        Room of = problem.rooms().get(room);
        List<Claim> claims = new ArrayList<>();
        Offer laid = plan.offer(room) == Allotment.BARE ? new Offer(List.of(), 0, 0, SharingProblem.Damping.NONE)
                : of.offers().get(plan.offer(room));
        if (!laid.cover().isEmpty()) {
            claims.add(new Claim(room, Place.of(of.panel()), layers(laid.cover()), laid.worth(), laid.worth(), 1, plan));
        }
        damping(problem, plan, room, claims);
        advised.ifPresent(a -> lacking(problem, plan, room, laid, a, claims));
        for (int h = 0; h < of.holes().size(); h++) {
            claims.add(hole(problem, plan, room, h));
        }
        return claims;
    }

    private static List<Laid> layers(List<Take> cover) {
        return cover.stream().map(Take::laid).toList();
    }

    private static void damping(SharingProblem problem, Allotment plan, int room, List<Claim> claims) {
        int[] pieces = plan.pieces(room);
        for (int j = 0; j < pieces.length; j++) {
            Offer offer = problem.rooms().get(room).offers().get(plan.offer(room));
            Part part = offer.part(j);
            int most = part.steps().size();
            claims.add(new Claim(room, part.patch().place(), damping(problem, offer, part), part.whole().worth(),
                    part.at(pieces[j]).worth(), (double) pieces[j] / most,
                    plan.with(room, plan.offer(room), oneMore(pieces, j, most))));
        }
    }

    private static int[] oneMore(int[] pieces, int part, int most) {
        int[] more = pieces.clone();
        more[part] = Math.min(more[part] + 1, most);
        return more;
    }

    private static List<Laid> damping(SharingProblem problem, Offer offer, Part part) {
        return List.of(new Laid(problem.goods().get(offer.damping().goods()).material(), List.of(part.patch())));
    }

    /** The layers that the plan has nothing of. */
    private static void lacking(SharingProblem problem, Allotment plan, int room, Offer laid, int advised,
                                List<Claim> claims) {
        Offer better = problem.rooms().get(room).offers().get(advised);
        if (better.worth(better.whole()) <= laid.worth(laid.whole())) {
            return;
        }
        List<Laid> lacking = layers(better.cover()).stream().filter(l -> laid.cover().stream()
                .noneMatch(t -> t.laid().layer() == l.layer())).toList();
        if (!lacking.isEmpty()) {
            claims.add(new Claim(room, Place.of(problem.rooms().get(room).panel()), lacking,
                    Math.max(0, better.worth() - laid.worth()), 0, 0,
                    plan.with(room, advised, better.least())));
        }
        if (laid.damping().parts().isEmpty()) {
            for (int j = 0; j < better.damping().parts().size(); j++) {
                Part part = better.part(j);
                claims.add(new Claim(room, part.patch().place(), damping(problem, better, part), part.whole().worth(), 0,
                        0, plan.with(room, advised, oneMore(better.least(), j, part.steps().size()))));
            }
        }
    }

    private static Claim hole(SharingProblem problem, Allotment plan, int room, int index) {
        Hole hole = problem.rooms().get(room).holes().get(index);
        boolean closed = plan.closes(room, index);
        return new Claim(room, hole.place(), List.of(new Laid(problem.goods().get(hole.goods()).material(),
                List.of(new Patch(hole.place(), 1, 0)))), hole.worth(), closed ? hole.worth() : 0, closed ? 1 : 0,
                plan.closing(room, index));
    }
}
