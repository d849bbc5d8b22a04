package unthrum.reasoning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import unthrum.effect.Laid;
import unthrum.effect.Layup;
import unthrum.effect.Patch;
import unthrum.facts.Bay;
import unthrum.facts.Panel;
import unthrum.facts.Place;
import unthrum.knowledge.Knowledge;
import unthrum.knowledge.Standing;
import unthrum.material.Catalogue;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.derive.MetalSheet;
import unthrum.reasoning.engine.Judgement;

/**
 * The exact search over the catalogue: of all layups inside the limits, the one that serves the wants best; among
 * equals the lightest, then the cheapest, then the first by name. Every admissible combination is looked at.
 */
final class LayupSearch {

    /** Until one merit is computed: what a weight point over a square metre counts as a share of the vehicle's. */
    static final double SHARE = 1.0 / 400;
    /** What only protects other layers counts a hundredth: it takes what they leave. Common practice. */
    private static final double PROTECTION = 0.01;

    private static final Rung[] RUNGS = Rung.values();

    private final Case panel;
    private final Limits limits;
    private final Merit merit;
    private final Map<Layer, List<WeighedWant>> wanted = new EnumMap<>(Layer.class);
    private final Map<Material, List<Judgement>> rejected = new LinkedHashMap<>();
    private final List<Material> admitted = new ArrayList<>();
    private final Map<Material, Candidate> bestWith = new IdentityHashMap<>();
    private final Map<Rung, Candidate> bestOnRung = new EnumMap<>(Rung.class);
    private final List<Layup> admissible = new ArrayList<>();
    private Candidate best = Candidate.NOTHING;

    /** The steps of the ladder, from the best treatment of an airborne source down. */
    enum Rung {
        DECOUPLED_BARRIER(l -> l.has(Layer.BARRIER) && l.has(Layer.DECOUPLER)),
        BARRIER_LAID_DIRECT(l -> l.has(Layer.BARRIER) && !l.has(Layer.DECOUPLER)),
        NO_BARRIER(l -> !l.has(Layer.BARRIER));

        private final Predicate<Layup> fits;

        Rung(Predicate<Layup> fits) {
            this.fits = fits;
        }
    }

    /** A layer that may be laid: how much of the wants' weight it serves, and what it adds. */
    private record Choice(Laid laid, double weight, double worth, double mass, double price, double thickness) {

        /** What only protects other layers serves no aim of its own. */
        boolean protects() {
            return laid.layer() == Layer.WEAR_FACE;
        }
    }

    /**
     * A layup, the weight of the wants that it serves at all, and how much of it it serves: a reason more comes before
     * a better material for the others, so that thicker foam never takes the room of a damping sheet. What only
     * protects other layers comes after them: a wear face takes the room that is left.
     */
    private record Candidate(Layup layup, double weight, double service, double protection, double mass, double price,
                             double thickness) {

        static final Candidate NOTHING = new Candidate(Layup.NOTHING, 0, 0, 0, 0, 0, 0);
        static final Comparator<Candidate> BETTER = Comparator
                .comparingLong((Candidate c) -> -Math.round(c.weight * 1e6))
                .thenComparingLong(c -> -Math.round(c.service * 1e6))
                .thenComparingLong(c -> -Math.round(c.protection * 1e6))
                .thenComparingLong(c -> Math.round(c.mass * 1e6))
                .thenComparingLong(c -> Math.round(c.price * 1e6))
                .thenComparing(c -> c.layup.toString());

        Candidate with(Choice choice) {
            List<Laid> layers = new ArrayList<>(layup.layers());
            layers.add(choice.laid);
            return new Candidate(new Layup(layers), weight + (choice.protects() ? 0 : choice.weight),
                    service + (choice.protects() ? 0 : choice.worth), protection + (choice.protects() ? choice.worth : 0),
                    mass + choice.mass, price + choice.price,
                    thickness + choice.thickness);
        }
    }

    LayupSearch(Case panel, List<WeighedWant> wants, Knowledge knowledge, Catalogue catalogue) {
        this.panel = panel;
        this.limits = new Limits(panel, knowledge);
        this.merit = new Merit(knowledge, panel.facts());
        wants.stream().filter(WeighedWant::stands).filter(w -> w.layer() != Layer.SEAL)
                .forEach(w -> wanted.computeIfAbsent(w.layer(), l -> new ArrayList<>()).add(w));
        List<List<Choice>> choices = new ArrayList<>();
        wanted.keySet().forEach(layer -> choices.add(choices(layer, catalogue)));
        combine(choices, 0, Candidate.NOTHING);
    }

    /** The best layup; nothing when nothing serves. */
    Layup best() {
        return best.layup();
    }

    /** What may be laid here: every admissible layup. */
    Options options() {
        List<Layer> safety = wanted.keySet().stream()
                .filter(l -> wanted.get(l).stream().anyMatch(WeighedWant::isForSafety)).toList();
        long most = admissible.stream().mapToLong(l -> safety.stream().filter(l::has).count()).max().orElse(0);
        return new Options(admissible.stream().filter(l -> !l.isEmpty()).map(l -> offer(l,
                safety.stream().filter(l::has).count() == most)).toList());
    }

    private Options.Offer offer(Layup layup, boolean safe) {
        List<Laid> cover = layup.layers().stream().filter(l -> l.layer() != Layer.DAMPING).toList();
        double gain = cover.stream().mapToDouble(l -> SHARE * weight(l.layer()) * merit.of(l.material()) * l.area()
                * (l.layer() == Layer.WEAR_FACE ? PROTECTION : 1)).sum();
        return new Options.Offer(cover, gain, layup.of(Layer.DAMPING).map(this::damped), safe);
    }

    private double weight(Layer layer) {
        return wanted.get(layer).stream().mapToDouble(WeighedWant::weight).max().orElse(0);
    }

    private Options.Damped damped(Laid laid) {
        List<Options.Part> parts = new ArrayList<>();
        for (int i = 0; i < laid.patches().size(); i++) {
            Patch patch = laid.patches().get(i);
            WeighedWant want = wanted.get(Layer.DAMPING).get(i);
            double served = patch.coverage() == 0 ? patch.area() : patch.area() / patch.coverage();
            double worth = SHARE * want.weight() * merit.of(laid.material()) * served;
            parts.add(new Options.Part(patch, want.isForSafety(),
                    returns(Layer.DAMPING, patch).stream().map(part -> part * worth).toList()));
        }
        return new Options.Damped(laid.material(), parts);
    }

    private List<Double> returns(Layer layer, Patch patch) {
        return panel.facts().all(Bay.class).filter(b -> layer == Layer.DAMPING && b.place().equals(patch.place()))
                .findFirst().map(b -> PartCover.returns(b, MetalSheet.of(panel.facts().the(Panel.class)).skin(),
                        patch.coverage())).orElse(List.of(1.0));
    }

    /** What became of each material of a wanted layer. */
    List<Considered> considered() {
        List<Considered> all = new ArrayList<>();
        rejected.forEach((material, by) -> all.add(new Considered(material, by, Optional.empty(), false)));
        bestWith.forEach((material, candidate) -> all.add(new Considered(material, List.of(),
                Optional.of(candidate.layup()), best.layup().layers().stream()
                        .anyMatch(l -> l.material().equals(material)))));
        admitted.stream().filter(material -> !bestWith.containsKey(material))
                .forEach(material -> all.add(new Considered(material, List.of(), Optional.empty(), false)));
        all.sort(Comparator.comparing((Considered c) -> c.material().layer())
                .thenComparing(c -> !c.chosen()).thenComparing(c -> c.material().material()));
        return all;
    }

    /** The ladder of a panel that wants a barrier, or nothing. */
    Optional<Ladder> ladder() {
        if (!wanted.containsKey(Layer.BARRIER)) {
            return Optional.empty();
        }
        return Optional.of(new Ladder(layup(Rung.DECOUPLED_BARRIER), layup(Rung.BARRIER_LAID_DIRECT),
                layup(Rung.NO_BARRIER), limits.stack()));
    }

    private Optional<Layup> layup(Rung rung) {
        return Optional.ofNullable(bestOnRung.get(rung)).map(Candidate::layup);
    }

    /** A limit of mere preference picks among the materials that pass the others; it never leaves a want unserved. */
    private List<Choice> choices(Layer layer, Catalogue catalogue) {
        List<Patch> patches = patches(layer);
        double weight = wanted.get(layer).stream().mapToDouble(WeighedWant::weight).max().orElse(0);
        Map<Laid, List<Judgement>> broken = new LinkedHashMap<>();
        catalogue.of(layer).stream().map(m -> new Laid(m, patches)).forEach(laid -> broken.put(laid, broken(laid)));
        boolean preferencesCanBeMet = broken.values().stream().anyMatch(List::isEmpty);
        List<Choice> choices = new ArrayList<>();
        broken.forEach((laid, by) -> {
            if (by.stream().allMatch(j -> j.standing() == Standing.PREFERENCE && !preferencesCanBeMet)) {
                admitted.add(laid.material());
                choices.add(new Choice(laid, weight, merit.of(laid.material()) * weight, laid.mass(), laid.price(),
                        laid.stackThickness()));
            } else {
                rejected.put(laid.material(), by);
            }
        });
        return choices;
    }

    /** The limits that a layer breaks by itself. */
    private List<Judgement> broken(Laid laid) {
        List<Judgement> broken = new ArrayList<>(limits.brokenBy(laid.material()));
        limits.brokenBy(new Layup(List.of(laid))).stream()
                .filter(j -> j.conclusion() instanceof unthrum.facts.Limit).forEach(broken::add);
        return broken;
    }

    /** Layers come in the order in which they lie; what a limit on the whole forbids, more layers do not mend. */
    private void combine(List<List<Choice>> choices, int depth, Candidate soFar) {
        if (!limits.bear(soFar.thickness, soFar.mass)) {
            return;
        }
        if (depth == choices.size()) {
            judge(soFar);
            return;
        }
        combine(choices, depth + 1, soFar);
        choices.get(depth).forEach(choice -> combine(choices, depth + 1, soFar.with(choice)));
    }

    private void judge(Candidate candidate) {
        Layup layup = candidate.layup;
        if (!limits.pair(layup)) {
            return;
        }
        best = better(best, candidate);
        admissible.add(layup);
        layup.layers().forEach(l -> bestWith.merge(l.material(), candidate, LayupSearch::better));
        for (Rung rung : RUNGS) {
            if (rung.fits.test(layup)) {
                bestOnRung.merge(rung, candidate, LayupSearch::better);
            }
        }
    }

    private static Candidate better(Candidate a, Candidate b) {
        return Candidate.BETTER.compare(a, b) <= 0 ? a : b;
    }

    /** Where a layer lies: damping on the bays that want it, everything else on the panel less its bare ribs. */
    private List<Patch> patches(Layer layer) {
        List<Patch> patches = new ArrayList<>();
        for (WeighedWant want : wanted.get(layer)) {
            Place place = want.place();
            double most = limits.coverage(layer, place).orElse(1);
            double area = panel.facts().all(Bay.class).filter(b -> b.place().equals(place))
                    .mapToDouble(Bay::area).findFirst().orElseGet(() -> panel.openArea(layer));
            patches.add(new Patch(place, most, area * most));
        }
        return patches;
    }
}
