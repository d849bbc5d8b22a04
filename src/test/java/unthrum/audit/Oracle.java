package unthrum.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import unthrum.Scenarios;
import unthrum.facts.Bay;
import unthrum.facts.Duty;
import unthrum.facts.Duty.Work;
import unthrum.facts.Limit;
import unthrum.facts.Limit.Bound;
import unthrum.facts.Opening;
import unthrum.facts.Pairing;
import unthrum.facts.Panel;
import unthrum.facts.Place;
import unthrum.facts.Question;
import unthrum.facts.Veto;
import unthrum.facts.Want;
import unthrum.knowledge.Standing;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.material.Material.Cell;
import unthrum.physics.Bridges;
import unthrum.physics.Decoupler;
import unthrum.physics.DoubleLeaf;
import unthrum.physics.Leaf;
import unthrum.physics.ThirdOctave;
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;
import unthrum.reasoning.Verdict;
import unthrum.reasoning.engine.Judgement;
import unthrum.survey.OpeningKind;

/**
 * Says what a job must be told of, from the conclusions of its plan and from nothing of the audit: which of them a
 * thing on one panel goes against, and how heavy that is. Written a second time on purpose.
 */
final class Oracle {
    private static final double ROUNDING = 1e-9;
    private static final double BRIGHT = Scenarios.KNOWLEDGE.number("enough/bright-face");

    /** A layer as it was found, side by side pieces together. */
    record Found(Layer layer, double thickness, double density, Map<Place, Double> shares) {
        boolean over(Place bay) {
            return shares.keySet().stream().anyMatch(p -> p.isWholePanel() || p.equals(bay));
        }
    }

    final Plan plan;
    final PlannedPanel panel;
    final Place whole;

    Oracle(Plan plan, PlannedPanel panel) {
        this.plan = plan;
        this.panel = panel;
        this.whole = Place.of(panel.name());
    }

    List<Judgement> judgements(Class<?> kind) {
        return panel.advice().panel().judgements().stream().filter(j -> kind.isInstance(j.conclusion())).toList();
    }

    List<Bay> bays() {
        return panel.advice().panel().facts().all(Bay.class).toList();
    }

    private static boolean assumed(List<Judgement> by) {
        return by.stream().flatMap(j -> j.reasons().stream()).allMatch(r -> r.restsOnAssumption());
    }

    private static Standing strongest(List<Judgement> by) {
        return by.stream().flatMap(j -> j.reasons().stream()).map(r -> r.rule().standing())
                .min(Comparator.naturalOrder()).orElse(Standing.PREFERENCE);
    }

    /** Safety hurts somebody; what rests on assumptions alone is only not shown to be right. */
    static Severity weigh(List<Judgement> by, Severity usual) {
        if (strongest(by) == Standing.SAFETY) {
            return Severity.DANGER;
        }
        return !by.isEmpty() && assumed(by) ? Severity.UNPROVEN : usual;
    }

    /** Vetoes at one place: practice means waste, and so does physics for layers that merely do nothing there. */
    Optional<Expected> lies(Layer layer, Place place) {
        List<Judgement> by = judgements(Veto.class).stream().filter(j -> j.conclusion().place().equals(place))
                .filter(j -> means(((Veto) j.conclusion()).layer(), layer)).toList();
        boolean waste = strongest(by).compareTo(Standing.PHYSICS) > 0 || strongest(by) == Standing.PHYSICS
                && EnumSet.of(Layer.DAMPING, Layer.DECOUPLER).contains(layer);
        return by.isEmpty() ? Optional.empty() : Optional.of(Expected.of(
                weigh(by, waste ? Severity.WASTE : Severity.FAULT), Mistake.LAYER_WHERE_NONE_MAY_BE, place, by));
    }

    static boolean means(Layer named, Layer layer) {
        return named == Layer.ANY || named == layer;
    }

    /** Limits that a material breaks by itself, one finding for each kind of bound. */
    List<Expected> limits(Material m) {
        return byBound(judgements(Limit.class).stream().filter(j -> !givenUp(j, m.layer()))
                .filter(j -> breaks(m, (Limit) j.conclusion())).toList());
    }

    /** A preference that the plan's own material of the layer does not meet binds nobody. */
    private boolean givenUp(Judgement limit, Layer layer) {
        return strongest(List.of(limit)) == Standing.PREFERENCE && panel.advice().layup().layers().stream()
                .filter(l -> l.layer() == layer).anyMatch(l -> breaks(l.material(), (Limit) limit.conclusion()));
    }

    private List<Expected> byBound(List<Judgement> broken) {
        Map<Bound, List<Judgement>> byBound = new TreeMap<>(broken.stream()
                .collect(Collectors.groupingBy(j -> ((Limit) j.conclusion()).bound())));
        List<Expected> expected = new ArrayList<>();
        byBound.forEach((bound, by) -> expected.add(Expected.of(weigh(by, bound == Bound.PLAIN_FACE ? Severity.WASTE
                : Severity.FAULT), Mistake.LIMIT_BROKEN, whole, by)));
        return expected;
    }

    private boolean breaks(Material m, Limit limit) {
        return means(limit.layer(), m.layer()) && switch (limit.bound()) {
            case LAYER_THICKNESS -> m.thickness().si() > limit.value();
            case SERVICE_TEMPERATURE -> m.serviceTo().si() < limit.value();
            case SERVICE_COLD -> m.serviceFrom().si() > limit.value();
            case HEAVY_ENOUGH -> m.surfaceDensity().si() < limit.value();
            case LIGHT_ENOUGH -> m.surfaceDensity().si() > limit.value();
            case BURN_RATE -> m.burnRate().map(r -> r.si() > limit.value()).orElse(true);
            case CLOSED_CELL -> EnumSet.of(Cell.OPEN, Cell.FIBRE).contains(m.cell());
            case LIFTS_OUT -> !m.removable();
            case NOT_BONDED -> m.bonding().sticks();
            case HELD -> m.bonding() == Material.Bonding.LOOSE;
            case BEARS_WEAR -> !m.bearsWear().orElse(false);
            case PLAIN_FACE -> m.bearsWear().orElse(false);
            case BRIGHT_FACE -> m.emissivity().map(e -> e.si() > BRIGHT).orElse(true);
            case STACK_THICKNESS, MASS, COVERAGE -> false;
        };
    }

    /** Bounds on the layers together: the stack over each bay, the mass on the panel and on the vehicle. */
    List<Expected> together(List<Found> found) {
        double stack = bays().stream().mapToDouble(b -> found.stream().filter(f -> f.over(b.place()))
                .filter(f -> f.layer() != Layer.HEAT_SHIELD).mapToDouble(Found::thickness).sum()).max().orElse(0);
        double mass = mass(found);
        List<Expected> expected = byBound(judgements(Limit.class).stream().filter(j -> {
            Limit l = (Limit) j.conclusion();
            return l.bound() == Bound.STACK_THICKNESS && stack > l.value() + ROUNDING
                    || l.bound() == Bound.MASS && !l.place().isVehicle() && mass > l.value() + ROUNDING;
        }).toList());
        double all = mass + plan.panels().stream().filter(p -> p != panel).mapToDouble(p -> p.layup().mass()).sum();
        List<Judgement> payload = plan.forAll().stream().filter(j -> j.conclusion() instanceof Limit l
                && l.bound() == Bound.MASS && all > l.value() + ROUNDING).toList();
        if (!payload.isEmpty()) {
            expected.add(Expected.of(weigh(payload, Severity.FAULT), Mistake.OVER_THE_JOBS_LIMIT, Place.VEHICLE,
                    payload));
        }
        return expected;
    }

    private double mass(List<Found> found) {
        double mass = 0;
        for (Found f : found) {
            for (Map.Entry<Place, Double> share : f.shares().entrySet()) {
                mass += f.density() * share.getValue() * bays().stream().filter(b -> b.place().equals(share.getKey()))
                        .mapToDouble(Bay::area).findFirst().orElseGet(() -> panel.advice().panel().openArea(f.layer()));
            }
        }
        return mass;
    }

    /** Layers without the companion they need, or with one that they must not meet. */
    List<Expected> pairings(Set<Layer> layers) {
        return judgements(Pairing.class).stream().filter(j -> {
            Pairing p = (Pairing) j.conclusion();
            return layers.contains(p.layer()) && layers.contains(p.other()) == (p.tie() == Pairing.Tie.NEVER_WITH);
        }).map(j -> Expected.of(weigh(List.of(j), ((Pairing) j.conclusion()).tie() == Pairing.Tie.NEEDS ? Severity.WASTE
                : Severity.FAULT), Mistake.USELESS_ALONE, j.conclusion().place(), List.of(j))).toList();
    }

    /** A layer covers more of a place than any limit there allows, beyond what an eye may be wrong by. */
    List<Expected> coverage(Layer layer, Place place, double share) {
        List<Judgement> by = judgements(Limit.class).stream().filter(j -> {
            Limit l = (Limit) j.conclusion();
            return l.bound() == Bound.COVERAGE && means(l.layer(), layer) && place.within(l.place())
                    && share - 0.1 > l.value();
        }).toList();
        return by.isEmpty() ? List.of()
                : List.of(Expected.of(weigh(by, Severity.WASTE), Mistake.COVERS_TOO_MUCH, place, by));
    }

    /** Any layer on a panel for which the plan asks before it decides. */
    List<Expected> unmeasured() {
        return panel.verdict() != Verdict.ASK ? List.of() : List.of(Expected.of(Severity.UNPROVEN,
                Mistake.NOT_MEASURED, whole, judgements(Question.class).stream()
                        .filter(j -> !j.conclusion().place().isVehicle()).toList()));
    }

    /** The standing wants for a layer at places of a kind. */
    List<Judgement> wants(Layer layer, Predicate<Place> where) {
        return panel.advice().wants().stream().filter(w -> w.stands() && w.layer() == layer && where.test(w.place()))
                .map(w -> w.judgement()).toList();
    }

    /**
     * The work that the panel asks for under these layers; a bare one asks for its own, as for opening a closed vent.
     */
    List<Judgement> due(Set<Layer> layers) {
        Set<Work> ofTheMetal = EnumSet.of(Work.TEST_OLD_LAYER, Work.REPAIR, Work.REPAINT, Work.CURE_RUST, Work.CLEAR_DRAIN,
                Work.REFIT_SHIELD, Work.FIX_RATTLE, Work.REMOVE_OLD_LAYER, Work.CLOSE_HOLE, Work.TELL_OWNER);
        boolean waits = layers.isEmpty() && panel.advice().verdict() == Verdict.HOLD;
        return panel.advice().duties(layers::contains, isGlued(layers)).stream()
                .filter(j -> !layers.isEmpty() || ofTheMetal.contains(work(j))
                        || work(j) == Work.KEEP_OPEN && strongest(List.of(j)) == Standing.SAFETY)
                .filter(j -> !waits || strongest(List.of(j)) == Standing.SAFETY).toList();
    }

    /** The work that the plan asks for before anything lies: a panel that waits is told all, since its turn comes. */
    List<Judgement> asked(Set<Layer> layers) {
        return panel.verdict() == Verdict.HOLD ? panel.advice().duties(layers::contains, isGlued(layers)) : due(layers);
    }

    private boolean isGlued(Set<Layer> layers) {
        return panel.layup().layers().stream().filter(l -> layers.contains(l.layer()))
                .anyMatch(l -> l.material().bonding() == Material.Bonding.CONTACT_ADHESIVE);
    }

    static Work work(Judgement duty) {
        return ((Duty) duty.conclusion()).work();
    }

    /** Whether a trial of the sound job shows the work, whatever is written of it. */
    boolean isTried(Judgement duty) {
        return switch (work(duty)) {
            case CHECK_TRAVEL, KEEP_TRAVEL, CHECK_DRAINS, CLEAR_DRAIN, CLOSE_HOLE, REFIT_TRIM -> true;
            case KEEP_OPEN, KEEP_CLEAR -> isDrain(duty.conclusion().place());
            default -> false;
        };
    }

    boolean isDrain(Place place) {
        return panel.advice().panel().facts().all(Opening.class)
                .anyMatch(o -> o.place().equals(place) && o.kind() == OpeningKind.DRAIN);
    }

    /** Duties that one and the same saying speaks against: at their place, or on the panel when they have several. */
    List<Expected> undone(List<Judgement> duties) {
        List<Place> places = duties.stream().map(j -> j.conclusion().place()).distinct().toList();
        return duties.isEmpty() ? List.of() : List.of(Expected.of(weigh(duties, Severity.FAULT), Mistake.WORK_NOT_DONE,
                places.size() == 1 ? places.get(0) : whole, duties));
    }

    /** The layers that a duty is about; none when it is about any. */
    static Set<Layer> about(Judgement duty) {
        return duty.reasons().stream().flatMap(r -> r.bindings().values().stream()).filter(Want.class::isInstance)
                .map(w -> ((Want) w).layer()).collect(Collectors.toSet());
    }
}
