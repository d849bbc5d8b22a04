package unthrum.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import unthrum.effect.Laid;
import unthrum.facts.Place;
import unthrum.material.Layer;
import unthrum.plan.LeftOut.Scarce;
import unthrum.plan.SharingProblem.Bounds;
import unthrum.plan.SharingProblem.Goods;
import unthrum.plan.SharingProblem.Hole;
import unthrum.plan.SharingProblem.Offer;
import unthrum.plan.SharingProblem.Room;
import unthrum.plan.SharingProblem.Use;
import unthrum.plan.Shares.LeftOver;
import unthrum.plan.Shares.NextPack;
import unthrum.plan.Shares.Ranked;

/** Reads off an allotment who got what, what was short, and what more would bring. */
final class ShareBook {

    private final SharingProblem problem;
    private final Allotment allotment;
    private final List<Claim> claims = new ArrayList<>();

    /** @param advised the offers that the panels' own advice would take */
    ShareBook(SharingProblem problem, Allotment allotment, Allotment advised) {
        this.problem = problem;
        this.allotment = allotment;
        for (int room = 0; room < problem.rooms().size(); room++) {
            int offer = advised.offer(room);
            claims.addAll(Claim.of(problem, allotment, room,
                    offer == Allotment.BARE ? OptionalInt.empty() : OptionalInt.of(offer)));
        }
        claims.sort(Claim.BY_WORTH);
    }

    List<Claim> claims() {
        return claims;
    }

    Shares shares(Proof proof) {
        return new Shares(claims.stream().map(ShareBook::ranked).toList(), nextPacks(), leftOvers(), proof);
    }

    private static Ranked ranked(Claim claim) {
        return new Ranked(claim.place(), claim.layers().stream().map(Laid::material).toList(), claim.area(),
                claim.worth() / SharingProblem.WORTH,
                claim.worth() == 0 ? claim.share() : (double) claim.given() / claim.worth());
    }

    /** What ran out for a claim: the first bound that its next piece would exceed, else the one most used up. */
    Scarce scarce(Claim claim) {
        if (!claim.more().fits(claim.room())) {
            return Scarce.PANEL;
        }
        Use more = claim.more().use();
        Bounds bounds = problem.bounds();
        if (more.roof() > bounds.roof()) {
            return Scarce.ROOF_MASS;
        }
        if (more.mass() > bounds.mass()) {
            return Scarce.ADDED_MASS;
        }
        if (more.money() > bounds.money()) {
            return Scarce.MONEY;
        }
        double mass = (double) more.mass() / bounds.mass();
        return mass > (double) more.money() / bounds.money() ? Scarce.ADDED_MASS : Scarce.MONEY;
    }

    /** The best first; of equals the cheaper. */
    private List<NextPack> nextPacks() {
        return IntStream.range(0, problem.goods().size()).mapToObj(this::nextPack).flatMap(Optional::stream)
                .sorted(Comparator.comparingDouble(NextPack::brings).reversed().thenComparing(NextPack::price)).toList();
    }

    private Optional<NextPack> nextPack(int goods) {
        Goods of = problem.goods().get(goods);
        Allotment more = filled(goods, allotment.left(goods) + of.pack());
        long brings = more.worth() - allotment.worth();
        return brings <= 0 ? Optional.empty() : Optional.of(
                new NextPack(of.material(), of.price() / 100.0, brings / SharingProblem.WORTH, gainers(goods, more)));
    }

    /** Where a material gains, what gains most first. */
    private List<Place> gainers(int goods, Allotment more) {
        List<Gain> gains = new ArrayList<>();
        for (int room = 0; room < problem.rooms().size(); room++) {
            Room of = problem.rooms().get(room);
            if (more.worth(room) > allotment.worth(room)) {
                gains.addAll(gains(room, goods, more));
            }
            for (int h = 0; h < of.holes().size(); h++) {
                if (more.closes(room, h) && !allotment.closes(room, h)) {
                    gains.add(new Gain(of.holes().get(h).place(), of.holes().get(h).worth()));
                }
            }
        }
        return gains.stream().sorted(Comparator.comparingLong(Gain::worth).reversed()).map(Gain::place).toList();
    }

    private record Gain(Place place, long worth) {
    }

    private List<Gain> gains(int room, int goods, Allotment more) {
        Room of = problem.rooms().get(room);
        Offer offer = of.offers().get(more.offer(room));
        if (offer.damping().goods() != goods) {
            return List.of(new Gain(Place.of(of.panel()), more.worth(room) - allotment.worth(room)));
        }
        boolean same = more.offer(room) == allotment.offer(room);
        return IntStream.range(0, more.pieces(room).length)
                .filter(j -> more.pieces(room)[j] > (same ? allotment.pieces(room)[j] : 0))
                .mapToObj(j -> new Gain(offer.part(j).patch().place(), offer.part(j).whole().worth())).toList();
    }

    /**
     * Lays that much more of a material, what brings most first. Of no other may more be bought; money does not count,
     * mass and panels do.
     */
    private Allotment filled(int goods, long area) {
        Bounds bounds = new Bounds(SharingProblem.FREE, problem.bounds().mass(), problem.bounds().roof())
                .atLeast(allotment.use());
        Allotment filled = allotment;
        for (Choice choice : choices(goods)) {
            filled = (choice.hole < 0
                    ? Greedy.laid(problem, filled, choice.room, choice.offer, a -> spends(a, goods, area, bounds))
                    : Optional.of(filled.closing(choice.room, choice.hole)).filter(a -> spends(a, goods, area, bounds)))
                    .orElse(filled);
        }
        return filled;
    }

    private boolean spends(Allotment tried, int goods, long area, Bounds bounds) {
        return tried.area(goods) - allotment.area(goods) <= area && bounds.admit(tried.use())
                && IntStream.range(0, problem.goods().size())
                        .allMatch(g -> g == goods || tried.packs(g) <= allotment.packs(g));
    }

    private record Choice(int room, int offer, int hole, long gain) {
    }

    /** All that takes a material and would bring more than what is there, what brings most first. */
    private List<Choice> choices(int goods) {
        List<Choice> choices = new ArrayList<>();
        for (int room = 0; room < problem.rooms().size(); room++) {
            int at = room;
            List<Offer> offers = problem.rooms().get(room).offers();
            IntStream.range(0, offers.size()).filter(i -> offers.get(i).uses(goods)).forEach(i -> choices.add(
                    new Choice(at, i, -1, offers.get(i).worth(offers.get(i).whole()) - allotment.worth(at))));
            List<Hole> holes = problem.rooms().get(room).holes();
            IntStream.range(0, holes.size()).filter(h -> holes.get(h).goods() == goods && !allotment.closes(at, h))
                    .forEach(h -> choices.add(new Choice(at, Allotment.BARE, h, holes.get(h).worth())));
        }
        return choices.stream().filter(c -> c.gain > 0).sorted(Comparator.comparingLong(Choice::gain).reversed()).toList();
    }

    private List<LeftOver> leftOvers() {
        List<LeftOver> leftOvers = new ArrayList<>();
        for (int g = 0; g < problem.goods().size(); g++) {
            if (allotment.left(g) > 0) {
                boolean alone = problem.goods().get(g).material().layer() == Layer.SEAL;
                leftOvers.add(new LeftOver(problem.goods().get(g).material(),
                        allotment.left(g) / (alone ? 1 : SharingProblem.AREA),
                        gainers(g, filled(g, allotment.left(g))).stream().findFirst()));
            }
        }
        return leftOvers;
    }
}
