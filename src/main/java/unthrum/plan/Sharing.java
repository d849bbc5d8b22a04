package unthrum.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import unthrum.effect.EffectCalculator;
import unthrum.facts.Limit;
import unthrum.material.Catalogue;
import unthrum.material.Material;
import unthrum.plan.LeftOut.Scarce;
import unthrum.plan.Proof.Standing;
import unthrum.plan.ShareBook.Claim;
import unthrum.plan.SharingProblem.Choice;
import unthrum.plan.SharingProblem.Part;
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
    private final Catalogue catalogue;
    private final EffectCalculator effects;
    private final Patience patience;

    Sharing(Survey survey, Catalogue catalogue, EffectCalculator effects, Patience patience) {
        this.survey = survey;
        this.catalogue = catalogue;
        this.effects = effects;
        this.patience = patience;
    }

    Plan share(PanelFacts vehicle, List<Judgement> forAll, List<PanelAdvice> advice) {
        Totals limits = totals(new Use(0, 0, 0), forAll);
        SharingProblem whole = ProblemBuilder.of(survey, catalogue, advice, limits);
        boolean scarce = isScarce(whole, advised(whole, advice));
        SharingProblem problem = scarce ? Dominance.pruned(whole) : whole;
        Allotment advised = advised(problem, advice);
        Settled settled = settle(problem, advised, scarce);
        ShareBook book = new ShareBook(problem, settled.allotment, advised);
        List<PlannedPanel> panels = new ArrayList<>();
        for (int room = 0; room < advice.size(); room++) {
            panels.add(planned(advice.get(room), room, problem, settled.allotment, book, limits));
        }
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
            return new Settled(advised, proof(Standing.NOTHING_SHORT, advised, advised.worth()));
        }
        Allotment ranked = Greedy.share(problem);
        if (!ExactSharing.isAvailable()) {
            return new Settled(ranked, proof(Standing.BY_RANK, ranked, mostWorth(problem)));
        }
        ExactSharing.Solved solved = ExactSharing.solve(problem, ranked, patience);
        return new Settled(solved.allotment(), proof(solved.proved() ? Standing.PROVED_BEST : Standing.BEST_FOUND,
                solved.allotment(), Math.min(solved.bound(), mostWorth(problem))));
    }

    private static Proof proof(Standing standing, Allotment allotment, long bound) {
        return new Proof(standing, allotment.worth() / SharingProblem.WORTH, bound / SharingProblem.WORTH);
    }

    /** More than any allotment can be worth: every place served by its best material. */
    private static long mostWorth(SharingProblem problem) {
        return problem.choices().stream().collect(Collectors.groupingBy(
                c -> List.of(c.room(), c.layer(), c.isAlone() ? c.parts().get(0).place() : ""),
                Collectors.mapping(Sharing::worth, Collectors.maxBy(Long::compare))))
                .values().stream().mapToLong(Optional::orElseThrow).sum();
    }

    /** What every panel would get by itself; where the search left a material out, the best of those that beat it. */
    private static Allotment advised(SharingProblem problem, List<PanelAdvice> advice) {
        Allotment advised = Allotment.nothing(problem);
        for (int i = 0; i < problem.choices().size(); i++) {
            Choice choice = problem.choices().get(i);
            boolean takes = choice.isAlone() || advice.get(choice.room()).layup().of(choice.layer())
                    .filter(laid -> choice == taken(problem, choice, laid.material())).isPresent();
            for (int j = 0; takes && j < choice.parts().size(); j++) {
                advised = advised.with(i, j, choice.parts().get(j).steps().size());
            }
        }
        return advised;
    }

    /** The choice that stands for the material on that panel, for the layer of the given choice. */
    private static Choice taken(SharingProblem problem, Choice like, Material material) {
        List<Choice> same = problem.choices().stream().filter(c -> c.room() == like.room() && c.layer() == like.layer())
                .toList();
        return same.stream().filter(c -> problem.goodsOf(c).material().equals(material)).findFirst()
                .orElseGet(() -> Collections.max(same, Comparator.comparingLong(Sharing::worth)));
    }

    private static long worth(Choice choice) {
        return choice.parts().stream().mapToLong(p -> p.whole().worth()).sum();
    }

    private static PlannedPanel planned(PanelAdvice advice, int room, SharingProblem problem, Allotment allotment,
                                        ShareBook book, Totals limits) {
        List<Laid> given = new ArrayList<>();
        List<Laid> whole = new ArrayList<>();
        List<LeftOut> leftOut = new ArrayList<>();
        for (Claim claim : book.claims()) {
            Choice choice = problem.choices().get(claim.choice());
            if (choice.room() == room) {
                Part part = book.part(claim);
                double share = (double) allotment.pieces(claim.choice(), claim.part()) / part.steps().size();
                if (share < 1) {
                    leftOut.add(new LeftOut(problem.goodsOf(choice).material(), of(part.patch(), 1 - share),
                            reason(book.scarce(claim), limits)));
                }
                if (!choice.isAlone()) {
                    add(whole, problem, choice, part.patch());
                }
                if (share > 0 && !choice.isAlone()) {
                    add(given, problem, choice, of(part.patch(), share));
                }
            }
        }
        return new PlannedPanel(advice.with(layup(whole)), layup(given), leftOut);
    }

    private static void add(List<Laid> layers, SharingProblem problem, Choice choice, Patch patch) {
        layers.add(new Laid(problem.goodsOf(choice).material(), List.of(patch)));
    }

    /** From the metal inward, the patches of one material together and in the order of their bays. */
    private static Layup layup(List<Laid> patches) {
        return new Layup(patches.stream().map(Laid::material).distinct()
                .sorted(Comparator.comparing(Material::layer))
                .map(m -> new Laid(m, patches.stream().filter(l -> l.material().equals(m))
                        .flatMap(l -> l.patches().stream()).sorted(Comparator.comparing(Patch::place)).toList()))
                .toList());
    }

    private static Patch of(Patch whole, double share) {
        return new Patch(whole.place(), whole.coverage() * share, whole.area() * share);
    }

    private static Scarce reason(Scarce scarce, Totals limits) {
        boolean payload = limits.payload().isPresent() && limits.massLimit().map(Quantity::si)
                .orElse(Double.POSITIVE_INFINITY) > limits.payload().get().si();
        return scarce == Scarce.ADDED_MASS && payload ? Scarce.PAYLOAD : scarce;
    }

    private Totals totals(Use use, List<Judgement> forAll) {
        Optional<Limits> limits = survey.limits();
        return new Totals(use.mass() / SharingProblem.MASS, use.roof() / SharingProblem.MASS, use.money() / 100.0,
                catalogue.all().get(0).price().currency(), limits.flatMap(Limits::addedMass),
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
