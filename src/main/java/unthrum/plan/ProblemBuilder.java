package unthrum.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import unthrum.facts.Bay;
import unthrum.facts.Limit;
import unthrum.facts.Panel;
import unthrum.material.Catalogue;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.plan.SharingProblem.Bounds;
import unthrum.plan.SharingProblem.Choice;
import unthrum.plan.SharingProblem.Goods;
import unthrum.plan.SharingProblem.Part;
import unthrum.plan.SharingProblem.Room;
import unthrum.plan.SharingProblem.Step;
import unthrum.reading.Quantity;
import unthrum.reasoning.Closing;
import unthrum.reasoning.Options;
import unthrum.reasoning.PanelAdvice;
import unthrum.effect.Patch;
import unthrum.survey.Survey;
import unthrum.reasoning.Verdict;
import unthrum.survey.Zone;

/**
 * Puts the panels' options, the shelf and the limits into whole numbers.
 *
 * <p>What a piece is worth: the weight of its want · the material's merit · the area it serves · the effect of that
 * much cover. Materials whose weight · merit differ by less than a fitter could tell count alike. A damping patch
 * serves its whole bay, half for ringing at all and half by how strongly the client's noises drive it, against the mean
 * of the vehicle; all other layers serve the area that they cover; a closed hole counts as a square metre.
 */
final class ProblemBuilder {

    private static final double HOLE = 1;
    /** What only protects other layers counts a hundredth: it takes what they leave. Common practice. */
    private static final double PROTECTION = 0.01;

    private final Survey survey;
    private final List<PanelAdvice> advice;
    private final Totals limits;
    private final double meanDrive;
    private final List<Goods> goods = new ArrayList<>();
    private final List<Choice> choices = new ArrayList<>();

    private ProblemBuilder(Survey survey, Catalogue catalogue, List<PanelAdvice> advice, Totals limits) {
        this.survey = survey;
        this.advice = advice;
        this.limits = limits;
        this.meanDrive = advice.stream().flatMap(a -> a.panel().facts().all(Bay.class)).mapToDouble(Bay::drive)
                .filter(Double::isFinite).average().orElse(0);
        catalogue.all().forEach(m -> goods.add(goods(m)));
    }

    /** @param limits of which only the limits count */
    static SharingProblem of(Survey survey, Catalogue catalogue, List<PanelAdvice> advice, Totals limits) {
        return new ProblemBuilder(survey, catalogue, advice, limits).build();
    }

    private SharingProblem build() {
        List<Room> rooms = new ArrayList<>();
        for (int i = 0; i < advice.size(); i++) {
            PanelAdvice panel = advice.get(i);
            Options options = panel.options();
            rooms.add(new Room(panel.name(), panel.panel().facts().the(Panel.class).zone() == Zone.ROOF,
                    atMost(options.stack(), 1e6), atMost(options.mass(), SharingProblem.MASS), options.pairings()));
            int room = i;
            options.offers().forEach(o -> choices.add(choice(room, panel, o)));
            closed(panel).forEach(c -> c.piece().ifPresent(m -> choices.add(closing(room, c, m))));
        }
        Bounds bounds = new Bounds(
                limits.moneyComparable() ? limits.moneyLimit().map(m -> m.amount().movePointRight(2).longValue())
                        .orElse(SharingProblem.FREE) : SharingProblem.FREE,
                Math.min(mass(limits.massLimit()), mass(limits.payload())), mass(limits.roofLimit()));
        return new SharingProblem(rooms, choices, goods, bounds);
    }

    private Choice choice(int room, PanelAdvice panel, Options.Offer offer) {
        double best = panel.options().offers().stream().filter(o -> o.layer() == offer.layer())
                .mapToDouble(Options.Offer::merit).max().orElseThrow();
        List<Part> parts = new ArrayList<>();
        for (Options.Part part : offer.parts()) {
            double merit = part.weight() * (best - offer.merit()) <= Options.ALIKE ? best : offer.merit();
            double worth = part.weight() * merit * served(panel, offer.layer(), part.patch())
                    * (offer.layer() == Layer.WEAR_FACE ? PROTECTION : 1);
            boolean required = part.safety() && panel.layup().has(offer.layer());
            parts.add(new Part(part.patch(), required, steps(offer.material(), part, worth)));
        }
        long thickness = offer.layer() == Layer.HEAT_SHIELD ? 0 : Math.round(offer.material().thickness().si() * 1e6);
        return new Choice(room, index(offer.material()), offer.layer(), thickness, parts);
    }

    /** Each further piece counts for something, be it ever so little. */
    private static List<Step> steps(Material material, Options.Part part, double worth) {
        List<Step> steps = new ArrayList<>();
        int pieces = part.returns().size();
        long before = 0;
        for (int n = 1; n <= pieces; n++) {
            double area = part.patch().area() * n / pieces;
            before = Math.max(before + 1, Math.round(SharingProblem.WORTH * worth * part.returns().get(n - 1)));
            steps.add(new Step(up(area * SharingProblem.AREA),
                    up(area * material.surfaceDensity().si() * SharingProblem.MASS), before));
        }
        return steps;
    }

    private double served(PanelAdvice panel, Layer layer, Patch patch) {
        Optional<Bay> bay = panel.panel().facts().all(Bay.class)
                .filter(b -> layer == Layer.DAMPING && b.place().equals(patch.place())).findFirst();
        if (bay.isEmpty() || patch.coverage() == 0) {
            return patch.area();
        }
        double drive = bay.get().drive() / meanDrive;
        return patch.area() / patch.coverage() * (Double.isFinite(drive) ? (1 + drive) / 2 : 1);
    }

    /** On a panel that waits no hole is closed, and nothing is bought for it. */
    private static List<Closing> closed(PanelAdvice panel) {
        return panel.verdict() == Verdict.HOLD ? List.of() : panel.closings();
    }

    private Choice closing(int room, Closing closing, Material piece) {
        Patch patch = new Patch(closing.want().place(), 1, 0);
        Step step = new Step(closing.count(), 0, Math.round(SharingProblem.WORTH * HOLE * closing.want().weight()));
        return new Choice(room, index(piece), Layer.SEAL, 0,
                List.of(new Part(patch, closing.want().isForSafety(), List.of(step))));
    }

    private int index(Material material) {
        for (int i = 0; i < goods.size(); i++) {
            if (goods.get(i).material().equals(material)) {
                return i;
            }
        }
        throw new IllegalStateException(material.material() + " is not in the catalogue");
    }

    private Goods goods(Material material) {
        boolean byPiece = material.layer() == Layer.SEAL;
        return new Goods(material, byPiece ? material.inPack() : Math.round(material.packArea() * SharingProblem.AREA),
                material.price().amount().movePointRight(2).longValue(), Shopping.onShelf(survey, material));
    }

    private static long mass(Optional<Quantity> limit) {
        return limit.map(l -> atMost(l.si(), SharingProblem.MASS)).orElse(SharingProblem.FREE);
    }

    /** Rounded up, so that no limit is exceeded; what only binary fractions add does not count. */
    private static long up(double value) {
        return (long) Math.ceil(value - 1e-6);
    }

    private static long atMost(double bound, double scale) {
        return Double.isInfinite(bound) ? SharingProblem.FREE : (long) Math.floor(bound * scale + 1e-6);
    }
}
