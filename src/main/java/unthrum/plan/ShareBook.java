package unthrum.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import unthrum.facts.Place;
import unthrum.plan.LeftOut.Scarce;
import unthrum.plan.SharingProblem.Bounds;
import unthrum.plan.SharingProblem.Choice;
import unthrum.plan.SharingProblem.Goods;
import unthrum.plan.SharingProblem.Part;
import unthrum.plan.SharingProblem.Use;
import unthrum.plan.Shares.LeftOver;
import unthrum.plan.Shares.NextPack;
import unthrum.plan.Shares.Ranked;

/** Reads off an allotment who got what, what was short, and what more would bring. */
final class ShareBook {

    private final SharingProblem problem;
    private final Allotment allotment;
    private final List<Claim> claims = new ArrayList<>();

    /** A part that the panel's own best layup, or the plan, covers. */
    record Claim(int choice, int part) {
    }

    /** @param advised the choices that the panels' own advice would take */
    ShareBook(SharingProblem problem, Allotment allotment, Allotment advised) {
        this.problem = problem;
        this.allotment = allotment;
        for (int i = 0; i < problem.choices().size(); i++) {
            boolean claims = allotment.lays(i) || advised.lays(i) && !isServedByAnother(i);
            for (int j = 0; claims && j < choice(i).parts().size(); j++) {
                this.claims.add(new Claim(i, j));
            }
        }
        claims.sort(Comparator.comparingLong((Claim c) -> -part(c).whole().worth())
                .thenComparing(c -> part(c).place()).thenComparing(c -> choice(c.choice()).layer()));
    }

    private boolean isServedByAnother(int i) {
        return !choice(i).isAlone() && IntStream.range(0, problem.choices().size()).anyMatch(o -> o != i
                && choice(o).room() == choice(i).room() && choice(o).layer() == choice(i).layer() && allotment.lays(o));
    }

    List<Claim> claims() {
        return claims;
    }

    Shares shares(Proof proof) {
        return new Shares(claims.stream().map(this::ranked).toList(), nextPacks(), leftOvers(), proof);
    }

    private Ranked ranked(Claim claim) {
        Part part = part(claim);
        return new Ranked(part.place(), choice(claim.choice()).layer(), goods(claim).material(), part.patch().area(),
                part.whole().worth() / SharingProblem.WORTH, (double) given(claim) / part.whole().worth());
    }

    private long given(Claim claim) {
        return part(claim).at(allotment.pieces(claim.choice(), claim.part())).worth();
    }

    /** What ran out for a claim: the first bound that its whole cover would exceed, else the one most used up. */
    Scarce scarce(Claim claim) {
        Allotment whole = allotment.with(claim.choice(), claim.part(), part(claim).steps().size());
        if (allotment.lays(claim.choice()) && !whole.fitsThePanels()) {
            return Scarce.PANEL;
        }
        Use more = whole.use();
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

    private List<NextPack> nextPacks() {
        return IntStream.range(0, problem.goods().size()).mapToObj(this::nextPack).flatMap(Optional::stream)
                .sorted(Comparator.comparingDouble(NextPack::brings).reversed()
                        .thenComparing(p -> p.material().material())).toList();
    }

    private Optional<NextPack> nextPack(int goods) {
        Goods of = problem.goods().get(goods);
        Allotment more = filled(goods, allotment.left(goods) + of.pack());
        long brings = more.worth() - allotment.worth();
        List<Place> places = gainers(more);
        return brings <= 0 ? Optional.empty()
                : Optional.of(new NextPack(of.material(), of.price() / 100.0, brings / SharingProblem.WORTH, places));
    }

    private List<Place> gainers(Allotment more) {
        return IntStream.range(0, problem.choices().size()).boxed().flatMap(i -> IntStream.range(0,
                choice(i).parts().size()).filter(j -> more.pieces(i, j) > allotment.pieces(i, j))
                .mapToObj(j -> new Claim(i, j))).sorted(Comparator.comparingLong(c -> -part(c).whole().worth()))
                .map(c -> part(c).place()).toList();
    }

    /** Lays that much more of a material, what brings most first; money does not count, mass and panels do. */
    private Allotment filled(int goods, long area) {
        Bounds bounds = new Bounds(SharingProblem.FREE, problem.bounds().mass(), problem.bounds().roof())
                .atLeast(allotment.use());
        List<Claim> inRank = IntStream.range(0, problem.choices().size()).filter(i -> choice(i).goods() == goods).boxed()
                .flatMap(i -> IntStream.range(0, choice(i).parts().size()).mapToObj(j -> new Claim(i, j)))
                .filter(c -> !isServedByAnother(c.choice()))
                .sorted(Comparator.comparingLong(c -> -part(c).whole().worth())).toList();
        Allotment filled = allotment;
        for (Claim claim : inRank) {
            for (int n = part(claim).steps().size(); n > filled.pieces(claim.choice(), claim.part()); n--) {
                Allotment tried = filled.with(claim.choice(), claim.part(), n);
                if (tried.area(goods) - allotment.area(goods) <= area && bounds.admit(tried.use())
                        && tried.fitsThePanels()) {
                    filled = tried;
                }
            }
        }
        return filled;
    }

    private List<LeftOver> leftOvers() {
        List<LeftOver> leftOvers = new ArrayList<>();
        for (int g = 0; g < problem.goods().size(); g++) {
            if (allotment.left(g) > 0) {
                boolean alone = problem.goods().get(g).material().layer() == unthrum.material.Layer.SEAL;
                leftOvers.add(new LeftOver(problem.goods().get(g).material(), allotment.left(g) / (alone ? 1 : SharingProblem.AREA),
                        gainers(filled(g, allotment.left(g))).stream().findFirst()));
            }
        }
        return leftOvers;
    }

    private Choice choice(int index) {
        return problem.choices().get(index);
    }

    Part part(Claim claim) {
        return choice(claim.choice()).parts().get(claim.part());
    }

    private Goods goods(Claim claim) {
        return problem.goodsOf(choice(claim.choice()));
    }
}
