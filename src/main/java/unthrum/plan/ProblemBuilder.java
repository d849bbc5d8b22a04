package unthrum.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import unthrum.effect.Laid;
import unthrum.effect.Patch;
import unthrum.facts.Panel;
import unthrum.effect.VehicleAccount;
import unthrum.knowledge.Knowledge;
import unthrum.material.Figures;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.plan.SharingProblem.Bounds;
import unthrum.plan.SharingProblem.Damping;
import unthrum.plan.SharingProblem.Goods;
import unthrum.plan.SharingProblem.Hole;
import unthrum.plan.SharingProblem.Offer;
import unthrum.plan.SharingProblem.Part;
import unthrum.plan.SharingProblem.Room;
import unthrum.plan.SharingProblem.Step;
import unthrum.plan.SharingProblem.Take;
import unthrum.reading.Quantity;
import unthrum.reasoning.Closing;
import unthrum.reasoning.Limits;
import unthrum.reasoning.Options;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.Verdict;
import unthrum.reasoning.WeighedWant;
import unthrum.survey.Survey;
import unthrum.survey.Zone;

/**
 * Puts the panels' options, the shelf and the limits into whole numbers. Goods, panels and offers stand in the order of
 * their figures, so that neither names nor the order of a file move the search.
 *
 * <p>Offers that serve a panel as well as its best one, as far as anyone could tell, count as much as that one: what
 * they bring is stretched to it. So money, mass and thickness decide between them.
 */
final class ProblemBuilder {

    private final Survey survey;
    private final Knowledge knowledge;
    private final AlikeOffers alike;
    private final double perMoney;
    private final List<PanelAdvice> advice;
    private final List<Goods> goods;

    private ProblemBuilder(Survey survey, Knowledge knowledge, VehicleAccount account, List<PanelAdvice> advice) {
        this.survey = survey;
        this.knowledge = knowledge;
        this.alike = new AlikeOffers(knowledge, account);
        this.perMoney = account.leastForMoney();
        this.advice = advice;
        this.goods = advice.stream().flatMap(ProblemBuilder::materials).distinct().sorted(Figures.ORDER)
                .map(this::goods).toList();
    }

    /** @param limits of which only the limits count */
    static SharingProblem of(Survey survey, Knowledge knowledge, VehicleAccount account, List<PanelAdvice> advice,
                             Totals limits) {
        ProblemBuilder builder = new ProblemBuilder(survey, knowledge, account, advice);
        List<Room> rooms = advice.stream().map(builder::room)
                .sorted(Comparator.comparing(Room::figures, Arrays::compare).thenComparing(Room::panel)).toList();
        return new SharingProblem(rooms, builder.goods, bounds(limits));
    }

    private static Bounds bounds(Totals limits) {
        return new Bounds(
                limits.moneyComparable() ? limits.moneyLimit().map(m -> m.amount().movePointRight(2).longValue())
                        .orElse(SharingProblem.FREE) : SharingProblem.FREE,
                Math.min(mass(limits.massLimit()), mass(limits.payload())), mass(limits.roofLimit()));
    }

    private static Stream<Material> materials(PanelAdvice panel) {
        return Stream.concat(panel.options().offers().stream().flatMap(o -> o.layup().layers().stream())
                .map(Laid::material), closed(panel).stream().flatMap(c -> c.piece().stream()));
    }

    private Goods goods(Material material) {
        boolean byPiece = material.layer() == Layer.SEAL;
        return new Goods(material, byPiece ? material.inPack() : Math.round(material.packArea() * SharingProblem.AREA),
                material.price().amount().movePointRight(2).longValue(), Shopping.onShelf(survey, material),
                Math.round(SharingProblem.WORTH * perMoney * material.price().amount().doubleValue()));
    }

    /** Where safety asks for a layer that an offer holds, only such offers are left, and one of them must be laid. */
    private Room room(PanelAdvice panel) {
        long mass = atMost(new Limits(panel.panel(), knowledge).mass());
        List<Options.Offer> listed = worthListing(panel.options().offers());
        boolean required = listed.stream().anyMatch(o -> o.safe() && isDue(o, panel.wants()));
        List<Options.Offer> may = listed.stream().filter(o -> o.safe() || !required).toList();
        double best = AlikeOffers.best(may);
        List<Offer> offers = may.stream().map(o -> offer(o, alike.isAlike(o, best) ? best : o.whole()))
                .filter(o -> o.mass(o.least()) <= mass)
                .sorted(Comparator.comparing(Offer::figures, Arrays::compare)).toList();
        List<Hole> holes = closed(panel).stream().flatMap(c -> c.piece().map(m -> hole(c, m)).stream())
                .sorted(Comparator.comparing(Hole::figures, Arrays::compare).thenComparing(Hole::place)).toList();
        return new Room(panel.name(), panel.panel().facts().the(Panel.class).zone() == Zone.ROOF, mass,
                required && !offers.isEmpty(), offers, holes);
    }

    /** The offers of which no other brings as much with less mass and money, whether or not the shelf gives its part. */
    private List<Options.Offer> worthListing(List<Options.Offer> offers) {
        List<Options.Offer> ranked = offers.stream().sorted(Comparator.comparing(Options.Offer::safe).reversed()
                .thenComparing(Comparator.comparingDouble(Options.Offer::whole).reversed())
                .thenComparing(o -> o.layup().mass()).thenComparing(o -> o.layup().price())
                .thenComparing(o -> o.layup().materials(), Figures::byFigures)).toList();
        List<Options.Offer> listed = new ArrayList<>();
        for (Options.Offer offer : ranked) {
            if (listed.stream().noneMatch(better -> beats(better, offer))) {
                listed.add(offer);
            }
        }
        return listed;
    }

    /** What of it is bought if the shelf gives all it can. */
    private double bought(Options.Offer offer) {
        return offer.layup().layers().stream().filter(l -> Shopping.onShelf(survey, l.material()) == 0)
                .mapToDouble(Laid::price).sum();
    }

    private boolean beats(Options.Offer better, Options.Offer offer) {
        return better.safe() == offer.safe() && better.layup().mass() <= offer.layup().mass()
                && better.layup().price() <= offer.layup().price() && bought(better) <= bought(offer);
    }

    private static boolean isDue(Options.Offer offer, List<WeighedWant> wants) {
        return wants.stream().anyMatch(w -> w.stands() && w.isForSafety() && offer.has(w.layer()));
    }

    /** @param counts as what it counts, laid whole */
    private Offer offer(Options.Offer offer, double counts) {
        double stretch = offer.whole() > 0 ? counts / offer.whole() : 1;
        List<Take> cover = offer.cover().stream().map(l -> new Take(index(l.material()), area(l.area()),
                mass(l.area(), l.material()), l)).toList();
        Damping damping = offer.damping().map(d -> damping(d, stretch)).orElse(Damping.NONE);
        long thickness = Math.round(offer.layup().thickness() * 1e6);
        Offer rounded = new Offer(cover, worth(offer.gain() * stretch), thickness, damping);
        return exact(rounded, worth(counts) - rounded.worth(rounded.whole()));
    }

    /** What rounding lost is given back where most is laid: to the cover, or else to the last piece of the last bay. */
    private static Offer exact(Offer offer, long lost) {
        if (!offer.cover().isEmpty() || offer.damping().parts().isEmpty()) {
            return new Offer(offer.cover(), offer.worth() + lost, offer.thickness(), offer.damping());
        }
        List<Part> parts = new ArrayList<>(offer.damping().parts());
        Part last = parts.remove(parts.size() - 1);
        List<Step> steps = new ArrayList<>(last.steps());
        Step whole = steps.remove(steps.size() - 1);
        steps.add(new Step(whole.area(), whole.mass(), whole.worth() + lost));
        parts.add(new Part(last.patch(), last.required(), steps));
        return new Offer(offer.cover(), offer.worth(), offer.thickness(), new Damping(offer.damping().goods(), parts));
    }

    private Damping damping(Options.Damped damped, double stretch) {
        Material material = damped.material();
        return new Damping(index(material), damped.parts().stream()
                .map(p -> new Part(p.patch(), p.required(), steps(material, p, stretch))).toList());
    }

    private static List<Step> steps(Material material, Options.Part part, double stretch) {
        List<Step> steps = new ArrayList<>();
        int pieces = part.gains().size();
        for (int n = 1; n <= pieces; n++) {
            double area = part.patch().area() * n / pieces;
            steps.add(new Step(area(area), mass(area, material), worth(part.gains().get(n - 1) * stretch)));
        }
        return steps;
    }

    /** On a panel that waits no hole is closed, and nothing is bought for it. */
    private static List<Closing> closed(PanelAdvice panel) {
        return panel.verdict() == Verdict.HOLD ? List.of() : panel.closings();
    }

    private Hole hole(Closing closing, Material piece) {
        return new Hole(closing.want().place(), index(piece), closing.count(), worth(closing.gain()),
                closing.want().isForSafety());
    }

    private int index(Material material) {
        for (int i = 0; i < goods.size(); i++) {
            if (goods.get(i).material().equals(material)) {
                return i;
            }
        }
        throw new IllegalStateException(material.material() + " is not among the goods");
    }

    private static long worth(double gain) {
        return SharingProblem.GAIN * Math.round(SharingProblem.WORTH / SharingProblem.GAIN * gain);
    }

    private static long area(double area) {
        return up(area * SharingProblem.AREA);
    }

    private static long mass(double area, Material material) {
        return up(area * material.surfaceDensity().si() * SharingProblem.MASS);
    }

    private static long mass(Optional<Quantity> limit) {
        return limit.map(l -> atMost(l.si())).orElse(SharingProblem.FREE);
    }

    /** Rounded up, so that no limit is exceeded; what only binary fractions add does not count. */
    private static long up(double value) {
        return (long) Math.ceil(value - 1e-6);
    }

    private static long atMost(double mass) {
        return Double.isInfinite(mass) ? SharingProblem.FREE : (long) Math.floor(mass * SharingProblem.MASS + 1e-6);
    }
}
