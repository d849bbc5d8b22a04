package unthrum.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import unthrum.Scenarios;
import unthrum.built.Built;
import unthrum.built.BuiltPanel;
import unthrum.built.BuiltPanel.Drains;
import unthrum.built.BuiltPanel.FittedLayer;
import unthrum.built.BuiltPanel.Travel;
import unthrum.built.BuiltPanel.TrimBack;
import unthrum.built.Done;
import unthrum.built.Edit;
import unthrum.facts.Bay;
import unthrum.facts.Duty;
import unthrum.facts.Duty.Work;
import unthrum.facts.Hold;
import unthrum.facts.Limit;
import unthrum.facts.Pairing;
import unthrum.facts.Place;
import unthrum.facts.Veto;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;
import unthrum.reading.Dimension;
import unthrum.reading.Quantity;
import unthrum.reasoning.engine.Judgement;

/** Breaks one conclusion in the sound job of a plan. */
record Breaking(Plan plan, Judgement judgement, String rule) {

    Built built() {
        Built sound = SoundJob.of(plan);
        if (judgement.conclusion() instanceof Duty duty && duty.place().isVehicle()) {
            sound = Edit.with(sound, "done", Optional.of(denied(sound.done().orElseThrow(), duty.work())));
        }
        return Edit.with(sound, "panels", sound.panels().stream().map(this::broken).toList());
    }

    private BuiltPanel broken(BuiltPanel panel) {
        PlannedPanel planned = plan.panel(panel.panel()).orElseThrow();
        if (judgement.conclusion() instanceof Veto veto) {
            return plus(panel, any(veto.layer()), veto.place());
        }
        if (judgement.conclusion() instanceof Limit limit) {
            return Edit.with(panel, "layers", Optional.of(beyond(limit)));
        }
        if (judgement.conclusion() instanceof Pairing pairing) {
            Layer layer = pairing.layer();
            return Edit.with(panel, "layers", Optional.of(List.of(layer(any(layer), Place.of(panel.panel()), 1))));
        }
        if (judgement.conclusion() instanceof Hold) {
            Bay bay = planned.advice().panel().facts().all(Bay.class).findFirst().orElseThrow();
            return Edit.with(plus(panel, any(Layer.DAMPING), bay.place()), "done", Optional.of(List.of()));
        }
        return undone(panel, planned, (Duty) judgement.conclusion());
    }

    private BuiltPanel undone(BuiltPanel panel, PlannedPanel planned, Duty duty) {
        List<FittedLayer> layers = new ArrayList<>(panel.layers().orElseThrow());
        planned.advice().wants().stream().map(w -> w.want()).filter(w -> w.layer() != Layer.SEAL)
                .filter(w -> layers.stream().noneMatch(l -> layerOf(l) == w.layer()))
                .forEach(w -> layers.add(layer(any(w.layer()), w.place(), 0.5)));
        if (layers.isEmpty()) {
            layers.add(layer(any(Layer.DAMPING), new Place(planned.name(), "bay 1"), 0.5));
        }
        BuiltPanel bad = Edit.with(panel, "layers", Optional.of(List.copyOf(layers)));
        bad = Edit.with(bad, "done", Optional.of(denied(bad.done().orElseThrow(), duty.work())));
        return switch (duty.work()) {
            case CHECK_TRAVEL, KEEP_TRAVEL -> Edit.with(bad, "travel", Optional.of(Travel.TOUCHES));
            case CHECK_DRAINS, CLEAR_DRAIN, KEEP_OPEN, KEEP_CLEAR ->
                    Edit.with(bad, "drains", Optional.of(Drains.BLOCKED));
            case CLOSE_HOLE -> Edit.with(bad, "closed", Optional.of(List.of()));
            case USE_HOT_ADHESIVE -> Edit.with(bad, "layers", Optional.of(glued(layers)));
            case TAP_AGAIN -> Edit.with(bad, "tapAfter", Optional.empty());
            case REFIT_TRIM -> Edit.with(bad, "trim", Optional.of(
                    new TrimBack(TrimBack.Fit.WITH_FORCE, Optional.empty())));
            default -> bad;
        };
    }

    private static List<FittedLayer> glued(List<FittedLayer> layers) {
        return layers.stream().map(l -> Edit.with(l, "bonding", Optional.of(Material.Bonding.CONTACT_ADHESIVE)))
                .toList();
    }

    private static List<Done> denied(List<Done> done, Work work) {
        return Stream.concat(done.stream().filter(d -> !d.work().contains(work)),
                Stream.of(Edit.with(SoundJob.done(work), "done", Optional.of(false)))).toList();
    }

    /** Layers that are past the bound, in the layer it is on. */
    private List<FittedLayer> beyond(Limit limit) {
        List<FittedLayer> layers = new ArrayList<>();
        for (Material m : Scenarios.CATALOGUE.all()) {
            if (m.layer() != Layer.SEAL && m.layer().matches(limit.layer())) {
                boolean heavy = limit.bound() == Limit.Bound.MASS || limit.bound() == Limit.Bound.STACK_THICKNESS;
                FittedLayer whole = layer(m, limit.place(), 1);
                if (limit.bound() == Limit.Bound.HEAVY_ENOUGH) {
                    whole = Edit.with(whole, "thickness", Optional.of(new Quantity(0.0005, Dimension.LENGTH)));
                }
                layers.add(heavy ? Edit.with(whole, "thickness", Optional.of(new Quantity(0.19, Dimension.LENGTH)))
                        : whole);
                if (!m.bonding().sticks()) {
                    layers.add(Edit.with(whole, "bonding", Optional.of(Material.Bonding.CONTACT_ADHESIVE)));
                }
            }
        }
        return layers;
    }

    private BuiltPanel plus(BuiltPanel panel, Material material, Place place) {
        boolean bay = place.isWholePanel() || place.part().startsWith("bay ");
        FittedLayer layer = bay ? layer(material, place, 0.5)
                : Edit.with(layer(material, Place.of(place.panel()), 0.5), "over", Optional.of(List.of(place.part())));
        return material.layer() == Layer.SEAL ? Edit.with(panel, "closed", Optional.of(List.of(place.part())))
                : Edit.with(panel, "layers", Optional.of(Stream.concat(panel.layers().orElseThrow().stream(),
                        Stream.of(layer)).toList()));
    }

    private static FittedLayer layer(Material material, Place place, double coverage) {
        Optional<List<String>> at = place.part().startsWith("bay ") ? Optional.of(List.of(place.part()))
                : Optional.empty();
        return SoundJob.layer(material.material(), at, coverage);
    }

    private static Material any(Layer layer) {
        return Scenarios.CATALOGUE.of(layer == Layer.ANY ? Layer.DAMPING : layer).get(0);
    }

    private static Layer layerOf(FittedLayer layer) {
        return Scenarios.CATALOGUE.find(layer.material()).orElseThrow().layer();
    }
}
