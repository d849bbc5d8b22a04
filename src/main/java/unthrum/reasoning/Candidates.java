package unthrum.reasoning;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import unthrum.effect.Laid;
import unthrum.effect.Layup;
import unthrum.effect.Patch;
import unthrum.facts.Bay;
import unthrum.facts.Limit;
import unthrum.facts.Limit.Bound;
import unthrum.facts.Place;
import unthrum.knowledge.Standing;
import unthrum.material.Catalogue;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.reasoning.engine.Judgement;

/**
 * The materials that may serve the standing wants of one panel, each laid where its layer is wanted, and those that a
 * limit rejects. A limit of mere preference rejects none: what it prefers decides between layups that are worth alike.
 */
final class Candidates {

    private final Case panel;
    private final Limits limits;
    private final Map<Place, Bay> bays = new HashMap<>();
    private final Map<Layer, List<WeighedWant>> wanted = new EnumMap<>(Layer.class);
    private final Map<Layer, List<Laid>> admitted = new EnumMap<>(Layer.class);
    private final Map<Material, List<Judgement>> rejected = new LinkedHashMap<>();

    Candidates(Case panel, Limits limits, List<WeighedWant> wants, Catalogue catalogue) {
        this.panel = panel;
        this.limits = limits;
        panel.facts().all(Bay.class).forEach(b -> bays.put(b.place(), b));
        wants.stream().filter(WeighedWant::stands).filter(w -> w.layer() != Layer.SEAL)
                .forEach(w -> wanted.computeIfAbsent(w.layer(), l -> new ArrayList<>()).add(w));
        for (Layer layer : wanted.keySet()) {
            List<Patch> patches = patches(layer);
            admitted.put(layer, new ArrayList<>());
            catalogue.of(layer).stream().map(m -> new Laid(m, patches)).forEach(this::admit);
        }
    }

    private void admit(Laid laid) {
        List<Judgement> binding = broken(laid).stream().filter(j -> j.standing() != Standing.PREFERENCE).toList();
        if (binding.isEmpty()) {
            admitted.get(laid.layer()).add(laid);
        } else {
            rejected.put(laid.material(), binding);
        }
    }

    /** The limits that a layer breaks by itself; of damping too heavy as a whole some bays may still get theirs. */
    private List<Judgement> broken(Laid laid) {
        List<Judgement> broken = new ArrayList<>(limits.brokenBy(laid.material()));
        limits.brokenBy(new Layup(List.of(laid))).stream().filter(j -> j.conclusion() instanceof Limit limit
                && (limit.bound() != Bound.MASS || laid.layer() != Layer.DAMPING)).forEach(broken::add);
        return broken;
    }

    /** How many limits of mere preference a material breaks. */
    int unloved(Material material) {
        return (int) limits.brokenBy(material).stream().filter(j -> j.standing() == Standing.PREFERENCE).count();
    }

    Map<Layer, List<WeighedWant>> wanted() {
        return wanted;
    }

    /** Whether anything but the closing of holes is wanted. */
    boolean any() {
        return !wanted.isEmpty();
    }

    List<Laid> of(Layer layer) {
        return admitted.getOrDefault(layer, List.of());
    }

    /** Every admitted layer of every kind. */
    List<Laid> all() {
        return admitted.values().stream().flatMap(List::stream).toList();
    }

    Map<Material, List<Judgement>> rejected() {
        return rejected;
    }

    /** Where a layer lies: damping on the bays that want it, everything else on the panel less its bare ribs. */
    private List<Patch> patches(Layer layer) {
        List<Patch> patches = new ArrayList<>();
        for (WeighedWant want : wanted.get(layer)) {
            Place place = want.place();
            double most = limits.coverage(layer, place).orElse(1);
            double area = bay(place) == null ? panel.openArea(layer) : bay(place).area();
            patches.add(new Patch(place, most, area * most));
        }
        return patches;
    }

    Bay bay(Place place) {
        return bays.get(place);
    }
}
