package unthrum.pieces;

import java.util.List;
import unthrum.facts.Panel;
import unthrum.facts.Rib;
import unthrum.knowledge.Knowledge;
import unthrum.material.Layer;
import unthrum.reasoning.Case;
import unthrum.survey.Curve;
import unthrum.survey.RibKind;
import unthrum.survey.Run;

/**
 * What a layer lies on, as far as its pieces are cut for it.
 *
 * @param clearings what it keeps clear of
 * @param folds     that it runs over
 * @param curvature the product of the panel's two curvatures, 1/mm²; 0 of what bends one way at most
 */
record Ground(List<Clearing> clearings, List<Fold> folds, double curvature, Relief.Bearing bearing) {

    /** A sharp bend in the metal, across or along the panel; its place in mm from the panel's start. */
    record Fold(Run runs, double at) {
        boolean isAcross() {
            return runs == Run.ACROSS;
        }
    }

    Ground {
        clearings = List.copyOf(clearings);
        folds = List.copyOf(folds);
    }

    /** Plates are not cut for the metal's shape, nor is anything for a shape that is only assumed. */
    static Ground of(Case panel, Layer layer, List<Clearing> clearings, Knowledge knowledge) {
        Panel whole = panel.facts().the(Panel.class);
        boolean plate = layer == Layer.HEAT_SHIELD || layer == Layer.WEAR_FACE;
        boolean crowned = whole.curve() == Curve.CROWNED && !whole.assumed().contains("shape");
        List<Fold> folds = plate || layer == Layer.DAMPING ? List.of() : panel.facts().all(Rib.class)
                .filter(r -> r.kind() == RibKind.FOLD && !panel.isBare(r.place(), layer))
                .map(r -> new Fold(r.runs(), r.at() * 1000)).toList();
        return new Ground(clearings, folds, plate || !crowned ? 0 : Relief.curvature(whole.length() * 1000,
                whole.width() * 1000, whole.rise() * 1000), new Relief.Bearing(knowledge.number("cutting/ruck"),
                knowledge.number("cutting/lap") * 1000));
    }
}
