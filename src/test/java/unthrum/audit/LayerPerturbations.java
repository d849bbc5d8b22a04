package unthrum.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import unthrum.Scenarios;
import unthrum.audit.Oracle.Found;
import unthrum.built.BuiltPanel;
import unthrum.built.BuiltPanel.FittedLayer;
import unthrum.built.Edit;
import unthrum.facts.Duty.Work;
import unthrum.facts.Fact;
import unthrum.facts.Place;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.material.Material.Bonding;
import unthrum.reading.Dimension;
import unthrum.reading.Quantity;
import unthrum.effect.Laid;
import unthrum.effect.Patch;
import unthrum.reasoning.engine.Judgement;

/** Layers on one panel of a sound job fitted otherwise. */
final class LayerPerturbations extends Perturbations {
    LayerPerturbations(Oracle oracle, BuiltPanel sound, Random random) {
        super(oracle, sound, random);
    }

    /** Empty where the panel gives no occasion for it. */
    Optional<Perturbation> of(Perturbation.Kind kind) {
        return switch (kind) {
            case THINNER -> any(laid).map(this::thinner);
            case ANOTHER_MATERIAL -> any(laid).flatMap(this::anotherMaterial);
            case COVERS_LESS -> any(laid).map(this::coversLess);
            case COVERS_ALL -> any(laid).map(this::coversAll);
            case LAYER_LEFT_OUT -> any(laid).map(this::leftOut);
            case LAYER_MORE -> oracle.panel.advice().holds().isEmpty() ? more() : Optional.empty();
            case HELD_OTHERWISE -> any(laid).map(this::heldOtherwise);
            case OVER_A_PART -> any(laid).flatMap(this::overAPart);
            default -> throw new IllegalArgumentException(kind + " is not about layers");
        };
    }

    private Perturbation with(List<FittedLayer> layers, List<Expected> expected) {
        return with("layers", layers, expected);
    }

    private static Layer layer(FittedLayer entry) {
        return Scenarios.CATALOGUE.find(entry.material()).orElseThrow().layer();
    }

    private List<FittedLayer> entries() {
        return sound.layers().orElseThrow();
    }

    /** The planned layers, one of them with another material. */
    private List<Found> found(Layer changed, Material material) {
        return laid.stream().map(l -> {
            Material m = l.layer() == changed ? material : l.material();
            return new Found(l.layer(), m.thickness().si(), m.surfaceDensity().si(), shares(l, 1));
        }).toList();
    }

    private static Map<Place, Double> shares(Laid laid, double times) {
        Map<Place, Double> shares = new LinkedHashMap<>();
        laid.patches().forEach(p -> shares.put(p.place(), p.coverage() * times));
        return shares;
    }

    private Expected differs() {
        return Expected.of(Severity.UNPROVEN, Mistake.DIFFERS_FROM_PLAN, oracle.whole, List.of());
    }

    private List<FittedLayer> edited(Layer layer, String component, Object value) {
        return entries().stream().map(l -> layer(l) == layer ? Edit.with(l, component, value) : l).toList();
    }

    private Perturbation thinner(Laid one) {
        Material m = one.material();
        Quantity half = new Quantity(m.thickness().si() / 2, Dimension.LENGTH);
        Material thin = Edit.with(Edit.with(m, "thickness", half), "surfaceDensity",
                new Quantity(m.surfaceDensity().si() / 2, Dimension.SURFACE_DENSITY));
        List<Expected> expected = oracle.limits(thin);
        return with(edited(one.layer(), "thickness", Optional.of(half)),
                expected.isEmpty() ? List.of(differs()) : expected);
    }

    private Optional<Perturbation> anotherMaterial(Laid one) {
        return any(Scenarios.CATALOGUE.of(one.layer()).stream().filter(m -> !m.equals(one.material())).toList())
                .map(m -> {
                    List<Expected> expected = new ArrayList<>(oracle.limits(m));
                    if (expected.isEmpty()) {
                        expected.add(differs());
                    }
                    expected.addAll(oracle.together(found(one.layer(), m)));
                    return with(edited(one.layer(), "material", m.material()), expected);
                });
    }

    private Perturbation coversLess(Laid one) {
        Patch patch = any(one.patches()).orElseThrow();
        double share = patch.coverage() * 0.4;
        List<Expected> expected = patch.coverage() - share > 0.1 ? List.of(Expected.of(Severity.FAULT,
                Mistake.COVERS_TOO_LITTLE, patch.place(), oracle.wants(one.layer(), patch.place()::equals)))
                : List.of();
        return with(covering(one.layer(), patch, share), expected);
    }

    private Perturbation coversAll(Laid one) {
        Patch patch = any(one.patches()).orElseThrow();
        List<Expected> expected = new ArrayList<>(oracle.coverage(one.layer(), patch.place(), 1));
        expected.addAll(oracle.together(laid.stream().map(l -> {
            Map<Place, Double> shares = shares(l, 1);
            if (l == one) {
                shares.put(patch.place(), 1.0);
            }
            return new Found(l.layer(), l.material().thickness().si(), l.material().surfaceDensity().si(), shares);
        }).toList()));
        return with(covering(one.layer(), patch, 1), expected);
    }

    private List<FittedLayer> covering(Layer layer, Patch patch, double share) {
        Optional<List<String>> at = patch.place().isWholePanel() ? Optional.empty()
                : Optional.of(List.of(patch.place().part()));
        return entries().stream().map(l -> layer(l) == layer && l.at().equals(at)
                ? Edit.with(l, "coverage", Optional.of(new Quantity(share, Dimension.SHARE))) : l).toList();
    }

    private Perturbation leftOut(Laid one) {
        Set<Layer> left = layers();
        left.remove(one.layer());
        List<Expected> expected = new ArrayList<>(oracle.pairings(left));
        one.patches().forEach(p -> expected.add(Expected.of(Severity.FAULT, Mistake.WANTED_LAYER_MISSING, p.place(),
                oracle.wants(one.layer(), p.place()::equals))));
        return with(entries().stream().filter(l -> layer(l) != one.layer()).toList(), expected);
    }

    /** A layer of a kind that the plan does not lay here, over half of the panel. */
    private Optional<Perturbation> more() {
        List<Layer> absent = Stream.of(Layer.DAMPING, Layer.DECOUPLER, Layer.BARRIER, Layer.INSULATION, Layer.ABSORBER,
                Layer.WEAR_FACE).filter(l -> !layers().contains(l)).toList();
        return any(absent).flatMap(l -> any(Scenarios.CATALOGUE.of(l))).map(m -> {
            Layer layer = m.layer();
            List<Expected> ofIt = new ArrayList<>(oracle.limits(m));
            boolean wanted = !oracle.wants(layer, oracle.whole::equals).isEmpty();
            Stream.concat(Stream.of(oracle.whole).filter(w -> !wanted), oracle.bays().stream().map(b -> b.place())
                    .filter(b -> oracle.wants(layer, b::equals).isEmpty()))
                    .forEach(place -> oracle.lies(layer, place).ifPresent(ofIt::add));
            ofIt.addAll(oracle.coverage(layer, oracle.whole, 0.5));
            Set<Layer> all = layers();
            all.add(layer);
            List<Expected> pairings = oracle.pairings(all);
            ofIt.addAll(pairings);
            if (ofIt.isEmpty()) {
                List<Judgement> wants = oracle.wants(layer, p -> true);
                ofIt.add(Expected.of(wants.isEmpty() ? Severity.WASTE : Severity.UNPROVEN, wants.isEmpty()
                        ? Mistake.NOTHING_ASKS_FOR_IT : Mistake.DIFFERS_FROM_PLAN, oracle.whole, wants));
            }
            List<Found> found = new ArrayList<>(found(Layer.ANY, m));
            found.add(new Found(layer, m.thickness().si(), m.surfaceDensity().si(), Map.of(oracle.whole, 0.5)));
            ofIt.addAll(oracle.together(found));
            ofIt.addAll(oracle.unmeasured());
            return with(Stream.concat(entries().stream(), Stream.of(SoundJob.layer(m.material(), Optional.empty(),
                    0.5))).toList(), ofIt);
        });
    }

    /** What is stuck is laid loose, and what lies loose or is fastened is stuck. */
    private Perturbation heldOtherwise(Laid one) {
        Material m = one.material();
        Bonding bonding = m.bonding().sticks() ? Bonding.LOOSE : Bonding.CONTACT_ADHESIVE;
        Material held = Edit.with(Edit.with(m, "bonding", bonding), "removable", m.removable() && !bonding.sticks());
        List<Expected> expected = oracle.limits(held);
        return with(edited(one.layer(), "bonding", Optional.of(bonding)),
                expected.isEmpty() ? List.of(differs()) : expected);
    }

    /** A veto at the part says it; where there is none, the work that would have kept the layer off it. */
    private Optional<Perturbation> overAPart(Laid one) {
        Set<String> bays = oracle.bays().stream().map(b -> b.place().part()).collect(Collectors.toSet());
        List<String> parts = oracle.panel.advice().panel().facts().facts().stream().map(Fact::place).map(Place::part)
                .filter(p -> !p.isEmpty() && !bays.contains(p)).distinct().toList();
        return any(parts).map(part -> {
            Place place = new Place(oracle.panel.name(), part);
            List<Expected> expected = oracle.lies(one.layer(), place).map(List::of).orElseGet(() -> oracle.undone(
                    due(j -> j.conclusion().place().equals(place) && Set.of(Work.PUNCH_CLEARANCE, Work.KEEP_CLEAR,
                            Work.CUT_ALONG_EDGE, Work.KEEP_OPEN).contains(Oracle.work(j))
                            && (Oracle.about(j).isEmpty() || Oracle.about(j).contains(one.layer())))));
            return with(edited(one.layer(), "over", Optional.of(List.of(part))), expected);
        });
    }

}
