package unthrum.reasoning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import unthrum.facts.Access;
import unthrum.facts.Bay;
import unthrum.facts.Panel;
import unthrum.facts.Place;
import unthrum.facts.Rib;
import unthrum.facts.Veto;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.reasoning.derive.MetalSheet;
import unthrum.reasoning.engine.Judgement;

/**
 * The exact search over the catalogue: of all layups inside the limits, the one that serves the wants best; among
 * equals the lightest, then the cheapest, then the first by name. Every admissible combination is looked at.
 */
final class LayupSearch {

    private final Case panel;
    private final Limits limits;
    private final Merit merit;
    private final Map<Layer, List<WeighedWant>> wanted = new EnumMap<>(Layer.class);
    private final Map<Material, List<Judgement>> rejected = new LinkedHashMap<>();
    private final Map<Material, Candidate> bestWith = new LinkedHashMap<>();
    private final Map<Material, Double> merits = new LinkedHashMap<>();
    private final Map<Rung, Candidate> bestOnRung = new EnumMap<>(Rung.class);
    private final List<Candidate> nearBest = new ArrayList<>();
    private Candidate best = new Candidate(Layup.NOTHING, 0);

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

    /** An admissible layup and how much of the wants' weight it serves. */
    record Candidate(Layup layup, double service) {

        static final Comparator<Candidate> BETTER = Comparator
                .comparingDouble((Candidate c) -> -Math.round(c.service * 1e6))
                .thenComparingDouble(c -> Math.round(c.layup.mass() * 1e6))
                .thenComparingDouble(c -> Math.round(c.layup.price() * 1e6))
                .thenComparing(c -> c.layup.toString());
    }

    LayupSearch(Case panel, List<WeighedWant> wants, Knowledge knowledge, Catalogue catalogue) {
        this.panel = panel;
        this.limits = new Limits(panel, knowledge);
        this.merit = new Merit(knowledge, panel.facts());
        wants.stream().filter(WeighedWant::stands).filter(w -> w.layer() != Layer.SEAL)
                .forEach(w -> wanted.computeIfAbsent(w.layer(), l -> new ArrayList<>()).add(w));
        List<List<Laid>> choices = new ArrayList<>();
        wanted.keySet().forEach(layer -> choices.add(choices(layer, catalogue)));
        combine(choices, 0, new ArrayList<>());
    }

    /** The best layup; nothing when nothing serves. */
    Layup best() {
        return best.layup();
    }

    /** What may be laid here. */
    Options options() {
        List<Options.Offer> offers = new ArrayList<>();
        merits.forEach((material, worth) -> offers.add(new Options.Offer(material, worth, parts(material.layer()))));
        return new Options(offers, limits.stack().orElse(Double.POSITIVE_INFINITY), limits.mass(), limits.pairings(),
                alike());
    }

    /** The layups of the same layers as the best one that serve nearly as well, the best first. */
    private List<Layup> alike() {
        return nearBest.stream().filter(c -> c.service >= best.service - Options.ALIKE).sorted(Candidate.BETTER)
                .map(Candidate::layup).filter(l -> layersOf(l).equals(layersOf(best.layup))).toList();
    }

    private static List<Layer> layersOf(Layup layup) {
        return layup.layers().stream().map(Laid::layer).toList();
    }

    private List<Options.Part> parts(Layer layer) {
        List<Patch> patches = patches(layer);
        List<Options.Part> parts = new ArrayList<>();
        for (int i = 0; i < patches.size(); i++) {
            WeighedWant want = wanted.get(layer).get(i);
            parts.add(new Options.Part(patches.get(i), want.weight(), want.isForSafety(),
                    returns(layer, patches.get(i))));
        }
        return parts;
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

    private List<Laid> choices(Layer layer, Catalogue catalogue) {
        List<Laid> choices = new ArrayList<>();
        for (Material material : catalogue.of(layer)) {
            Laid laid = new Laid(material, patches(layer));
            List<Judgement> broken = new ArrayList<>(limits.brokenBy(material));
            limits.brokenBy(new Layup(List.of(laid))).stream()
                    .filter(j -> j.conclusion() instanceof unthrum.facts.Limit).forEach(broken::add);
            if (broken.isEmpty()) {
                merits.put(material, merit.of(material));
                choices.add(laid);
            } else {
                rejected.put(material, broken);
            }
        }
        return choices;
    }

    private void combine(List<List<Laid>> choices, int depth, List<Laid> chosen) {
        if (depth == choices.size()) {
            judge(new Layup(chosen.stream().sorted(Comparator.comparing(Laid::layer)).toList()));
            return;
        }
        combine(choices, depth + 1, chosen);
        for (Laid laid : choices.get(depth)) {
            chosen.add(laid);
            combine(choices, depth + 1, chosen);
            chosen.remove(chosen.size() - 1);
        }
    }

    private void judge(Layup layup) {
        if (!limits.admits(layup)) {
            return;
        }
        Candidate candidate = new Candidate(layup, service(layup));
        best = better(best, candidate);
        if (candidate.service >= best.service - Options.ALIKE) {
            nearBest.add(candidate);
        }
        layup.layers().forEach(l -> bestWith.merge(l.material(), candidate, LayupSearch::better));
        for (Rung rung : Rung.values()) {
            if (rung.fits.test(layup)) {
                bestOnRung.merge(rung, candidate, LayupSearch::better);
            }
        }
    }

    private static Candidate better(Candidate a, Candidate b) {
        return Candidate.BETTER.compare(a, b) <= 0 ? a : b;
    }

    private double service(Layup layup) {
        return layup.layers().stream().mapToDouble(laid -> merits.get(laid.material())
                * wanted.get(laid.layer()).stream().mapToDouble(WeighedWant::weight).max().orElse(0)).sum();
    }

    /** Where a layer lies: damping on the bays that want it, everything else on the panel less its bare ribs. */
    private List<Patch> patches(Layer layer) {
        double reachable = panel.facts().the(Access.class).reachable();
        List<Patch> patches = new ArrayList<>();
        for (WeighedWant want : wanted.get(layer)) {
            Place place = want.place();
            double most = limits.coverage(layer, place).orElse(1);
            double area = panel.facts().all(Bay.class).filter(b -> b.place().equals(place))
                    .mapToDouble(Bay::area).findFirst().orElseGet(() -> openArea(layer));
            patches.add(new Patch(place, most, area * most * reachable));
        }
        return patches;
    }

    private double openArea(Layer layer) {
        Panel whole = panel.facts().the(Panel.class);
        double bare = panel.facts().all(Rib.class).filter(r -> isBare(r.place(), layer))
                .mapToDouble(r -> r.breadth() * (r.runs() == unthrum.survey.Run.ACROSS ? whole.width() : whole.length()))
                .sum();
        return Math.max(whole.area() - bare, 0);
    }

    private boolean isBare(Place part, Layer layer) {
        return panel.all(Veto.class).stream().map(j -> (Veto) j.conclusion())
                .anyMatch(v -> v.place().equals(part) && layer.matches(v.layer()));
    }
}
