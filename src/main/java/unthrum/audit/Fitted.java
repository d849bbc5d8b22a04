package unthrum.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import unthrum.built.BuiltPanel;
import unthrum.built.BuiltPanel.FittedLayer;
import unthrum.facts.Bay;
import unthrum.facts.Place;
import unthrum.material.Catalogue;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.plan.PlannedPanel;
import unthrum.reading.Quantity;
import unthrum.effect.Laid;
import unthrum.effect.Layup;
import unthrum.effect.Patch;

/** What lies on a panel, in the terms of its plan, so that the plan's own limits can judge it. */
record Fitted(List<Piece> pieces) {

    /** A layer as it was written down, and as it is laid. */
    record Piece(FittedLayer entry, Laid laid) {
        Layer layer() {
            return laid.layer();
        }
    }

    static Fitted of(BuiltPanel built, PlannedPanel planned, Catalogue catalogue) {
        List<Piece> pieces = new ArrayList<>();
        for (FittedLayer entry : built.layers().orElse(List.of())) {
            Material material = asMeasured(catalogue.find(entry.material()).orElseThrow(), entry);
            pieces.add(new Piece(entry, new Laid(material, patches(entry, material.layer(), planned))));
        }
        return new Fitted(pieces);
    }

    boolean isEmpty() {
        return pieces.isEmpty();
    }

    boolean has(Layer layer) {
        return pieces.stream().anyMatch(p -> p.layer() == layer);
    }

    Layup layup() {
        return layup(pieces.stream().map(Piece::laid).toList());
    }

    /** The layers over one bay. */
    Layup over(Place bay) {
        return layup(pieces.stream().map(Piece::laid)
                .filter(l -> l.patches().stream().anyMatch(p -> bay.within(p.place()))).toList());
    }

    /** The share of a place that a kind of layer covers. */
    double coverage(Layer layer, Place place) {
        return pieces.stream().filter(p -> p.layer() == layer).flatMap(p -> p.laid().patches().stream())
                .filter(p -> place.within(p.place())).mapToDouble(Patch::coverage).sum();
    }

    /** The materials that lie over a part of the panel, of the given kinds of layer, or of any when none is given. */
    List<String> over(Place part, List<Layer> layers) {
        return pieces.stream().filter(p -> layers.isEmpty() || layers.contains(p.layer()))
                .filter(p -> p.entry().over().orElse(List.of()).contains(part.part()))
                .map(p -> p.laid().material().material()).distinct().toList();
    }

    /** Pieces of one material side by side are one layer; on top of each other they are two. */
    private static Layup layup(List<Laid> pieces) {
        List<Laid> layers = new ArrayList<>();
        for (Laid piece : pieces) {
            Optional<Laid> beside = layers.stream().filter(l -> l.material().equals(piece.material()))
                    .filter(l -> !overlap(l, piece)).findFirst();
            beside.ifPresent(layers::remove);
            layers.add(beside.map(l -> new Laid(l.material(), Stream.concat(l.patches().stream(),
                    piece.patches().stream()).toList())).orElse(piece));
        }
        return new Layup(layers.stream().sorted(Comparator.comparing(Laid::layer)).toList());
    }

    private static boolean overlap(Laid one, Laid other) {
        return one.patches().stream().anyMatch(p -> other.patches().stream()
                .anyMatch(q -> p.place().within(q.place()) || q.place().within(p.place())));
    }

    private static List<Patch> patches(FittedLayer entry, Layer layer, PlannedPanel planned) {
        String panel = planned.name();
        List<Place> places = entry.at().map(bays -> bays.stream().map(b -> new Place(panel, b)).toList())
                .orElse(List.of(Place.of(panel)));
        return places.stream().map(place -> {
            double share = entry.coverage().map(Quantity::si).orElseGet(() -> planned(layer, place, planned));
            return new Patch(place, share, share * area(place, layer, planned));
        }).toList();
    }

    /** An unknown share is taken as planned. */
    private static double planned(Layer layer, Place place, PlannedPanel planned) {
        return planned.layup().of(layer).stream().flatMap(l -> l.patches().stream())
                .filter(p -> p.place().equals(place)).mapToDouble(Patch::coverage).findFirst().orElse(1);
    }

    private static double area(Place place, Layer layer, PlannedPanel planned) {
        return planned.advice().panel().facts().all(Bay.class).filter(b -> b.place().equals(place))
                .mapToDouble(Bay::area).findFirst().orElseGet(() -> planned.advice().panel().openArea(layer));
    }

    /** The material with the thickness and the bonding that were found. */
    private static Material asMeasured(Material m, FittedLayer entry) {
        double thicker = entry.thickness().map(t -> t.si() / m.thickness().si()).orElse(1.0);
        Quantity density = new Quantity(m.surfaceDensity().si() * thicker, m.surfaceDensity().dimension());
        boolean loose = entry.bonding().map(b -> !b.sticks()).orElse(m.removable());
        return new Material(m.material(), m.is(), m.layer(), entry.thickness().orElse(m.thickness()), density,
                m.serviceFrom(), m.serviceTo(), m.bondsFrom(), m.cell(), m.burnRate(),
                entry.bonding().orElse(m.bonding()), m.removable() && loose, m.form(), m.size(), m.inPack(), m.price(),
                m.conductivity(), m.emissivity(), m.bearsWear(), m.runsOneWay(), m.closes(), m.springModulus(), m.damping(),
                m.published());
    }
}
