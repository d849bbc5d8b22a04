package unthrum.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import unthrum.effect.EffectCalculator;
import unthrum.effect.VehicleAccount;
import unthrum.facts.Limit;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.material.Material;
import unthrum.plan.LeftOut.Scarce;
import unthrum.plan.Proof.Standing;
import unthrum.plan.SharingProblem.Hole;
import unthrum.plan.SharingProblem.Offer;
import unthrum.plan.SharingProblem.Room;
import unthrum.plan.SharingProblem.Use;
import unthrum.reading.Dimension;
import unthrum.reading.Quantity;
import unthrum.effect.Laid;
import unthrum.effect.Layup;
import unthrum.reasoning.PanelAdvice;
import unthrum.effect.Patch;
import unthrum.derive.PanelFacts;
import unthrum.reasoning.engine.Judgement;
import unthrum.survey.Limits;
import unthrum.survey.Survey;

/**
 * Shares the shelf, mass and money among the panels. Where every panel's own best layup fits the limits and nothing
 * lies on the shelf, that is the plan; else the exact search shares, starting from the ranking.
 */
final class Sharing {

    private final Survey survey;
    private final Knowledge knowledge;
    private final VehicleAccount account;
    private final Catalogue catalogue;
    private final EffectCalculator effects;
    private final Patience patience;

    Sharing(Survey survey, Knowledge knowledge, Catalogue catalogue, VehicleAccount account, EffectCalculator effects,
            Patience patience) {
        this.survey = survey;
        this.knowledge = knowledge;
        this.account = account;
        this.catalogue = catalogue;
        this.effects = effects;
        this.patience = patience;
    }

    Plan share(PanelFacts vehicle, List<Judgement> forAll, List<PanelAdvice> advice) {
        Totals limits = totals(new Use(0, 0, 0), forAll);
        SharingProblem whole = ProblemBuilder.of(survey, knowledge, account, advice, limits);
        boolean scarce = isScarce(whole, advised(whole, advice));
        SharingProblem problem = scarce ? Dominance.pruned(whole) : whole;
        Allotment advised = advised(problem, advice);
        Settled settled = settle(problem, advised, scarce);
        ShareBook book = new ShareBook(problem, settled.allotment, advised);
        List<PlannedPanel> panels = advice.stream().map(a -> planned(a, book, limits)).toList();
        return new Plan(survey, vehicle, forAll, panels, Shopping.of(problem, settled.allotment),
                totals(settled.allotment.use(), forAll), book.shares(settled.proof),
                effects.of(panels.stream().map(PlannedPanel::treated).toList()));
    }

    private record Settled(Allotment allotment, Proof proof) {
    }

    /** Whether anything must be shared: a limit is short, or the shelf is to be used up. */
    private boolean isScarce(SharingProblem problem, Allotment advised) {
        return !problem.bounds().admit(advised.use()) || !survey.stock().orElse(List.of()).isEmpty();
    }

    private Settled settle(SharingProblem problem, Allotment advised, boolean scarce) {
        if (!scarce) {
            return new Settled(advised, proof(Standing.NOTHING_SHORT, advised, advised.net()));
        }
        Allotment ranked = Greedy.share(problem);
        if (!ExactSharing.isAvailable()) {
            return new Settled(ranked, proof(Standing.BY_RANK, ranked, mostWorth(problem)));
        }
        ExactSharing.Solved solved = ExactSharing.solve(problem, ranked, patience,
                Math.round(SharingProblem.WORTH * knowledge.number("tell/shared")));
        return new Settled(solved.allotment(), proof(solved.proved() ? Standing.PROVED_BEST : Standing.BEST_FOUND,
                solved.allotment(), Math.min(solved.bound(), mostWorth(problem))));
    }

    private static Proof proof(Standing standing, Allotment allotment, long bound) {
        return new Proof(standing, allotment.net() / SharingProblem.WORTH, bound / SharingProblem.WORTH);
    }

    /** More than any allotment can be worth: every panel served by its best offer, every hole closed. */
    private static long mostWorth(SharingProblem problem) {
        return problem.rooms().stream().mapToLong(r -> r.offers().stream().mapToLong(o -> o.worth(o.whole())).max().orElse(0)
                + r.holes().stream().mapToLong(Hole::worth).sum()).sum();
    }

    /**
     * What every panel would get by itself, as far as the panel bears it; where the search left that out, the best that
     * there is.
     */
    private static Allotment advised(SharingProblem problem, List<PanelAdvice> advice) {
        Map<String, Layup> layups = advice.stream().collect(Collectors.toMap(PanelAdvice::name, PanelAdvice::layup));
        Allotment advised = Allotment.nothing(problem);
        for (int room = 0; room < problem.rooms().size(); room++) {
            Room of = problem.rooms().get(room);
            Layup layup = layups.get(of.panel());
            if (!layup.isEmpty() && !of.offers().isEmpty()) {
                advised = advised(problem, advised, room, layup);
            }
            for (int h = 0; h < of.holes().size(); h++) {
                advised = advised.closing(room, h);
            }
        }
        return advised;
    }

    private static Allotment advised(SharingProblem problem, Allotment others, int room, Layup layup) {
        List<Offer> offers = problem.rooms().get(room).offers();
        List<Integer> all = IntStream.range(0, offers.size()).boxed().toList();
        List<Integer> own = all.stream().filter(i -> is(problem, offers.get(i), layup)).limit(1).toList();
        return (own.isEmpty() ? all : own).stream().flatMap(i -> laid(problem, others, room, i).stream())
                .max(Comparator.comparingLong(a -> a.worth(room))).orElse(others);
    }

    private static Optional<Allotment> laid(SharingProblem problem, Allotment others, int room, int offer) {
        Allotment whole = others.with(room, offer, problem.rooms().get(room).offers().get(offer).whole());
        return whole.fits(room) ? Optional.of(whole) : Greedy.laid(problem, others, room, offer, a -> true);
    }

    private static boolean is(SharingProblem problem, Offer offer, Layup layup) {
        Stream<Material> cover = offer.cover().stream().map(t -> t.laid().material());
        Stream<Material> damping = Stream.of(offer.damping()).filter(d -> !d.parts().isEmpty())
                .map(d -> problem.goods().get(d.goods()).material());
        return Stream.concat(cover, damping).collect(Collectors.toSet())
                .equals(layup.layers().stream().map(Laid::material).collect(Collectors.toSet()));
    }


    private static PlannedPanel planned(PanelAdvice advice, ShareBook book, Totals limits) {
        List<Laid> given = new ArrayList<>();
        List<Laid> whole = new ArrayList<>();
        List<LeftOut> leftOut = new ArrayList<>();
        book.claims().stream().filter(c -> c.place().panel().equals(advice.name())).forEach(claim -> {
            for (Laid laid : claim.layers()) {
                if (claim.share() < 1) {
                    laid.patches().forEach(p -> leftOut.add(new LeftOut(laid.material(), Claim.of(p, 1 - claim.share()),
                            reason(book.scarce(claim), limits))));
                }
                if (!claim.closesAHole()) {
                    whole.add(laid);
                }
                if (claim.share() > 0 && !claim.closesAHole()) {
                    given.add(new Laid(laid.material(), laid.patches().stream()
                            .map(p -> Claim.of(p, claim.share())).toList()));
                }
            }
        });
        return new PlannedPanel(advice.with(layup(whole)), layup(given), leftOut);
    }

    /** From the metal inward, the patches of one material together and in the order of their bays. */
    private static Layup layup(List<Laid> patches) {
        return new Layup(patches.stream().map(Laid::material).distinct()
                .sorted(Comparator.comparing(Material::layer))
                .map(m -> new Laid(m, patches.stream().filter(l -> l.material().equals(m))
                        .flatMap(l -> l.patches().stream()).sorted(Comparator.comparing(Patch::place)).toList()))
                .toList());
    }

    private static Scarce reason(Scarce scarce, Totals limits) {
        boolean payload = limits.payload().isPresent() && limits.massLimit().map(Quantity::si)
                .orElse(Double.POSITIVE_INFINITY) > limits.payload().get().si();
        return scarce == Scarce.ADDED_MASS && payload ? Scarce.PAYLOAD : scarce;
    }

    private Totals totals(Use use, List<Judgement> forAll) {
        Optional<Limits> limits = survey.limits();
        return new Totals(use.mass() / SharingProblem.MASS, use.roof() / SharingProblem.MASS, use.money() / 100.0,
                catalogue.currency(), limits.flatMap(Limits::addedMass),
                limits.flatMap(Limits::roofMass), limits.flatMap(Limits::money), payload(forAll));
    }

    /** What the rules leave of the payload for the whole job. */
    private static Optional<Quantity> payload(List<Judgement> forAll) {
        return forAll.stream().map(Judgement::conclusion)
                .filter(c -> c instanceof Limit limit && limit.bound() == Limit.Bound.MASS)
                .map(c -> new Quantity(((Limit) c).value(), Dimension.MASS))
                .min(Comparator.comparingDouble(Quantity::si));
    }
}
