package unthrum.reasoning.change;

import unthrum.facts.Place;
import unthrum.material.Layer;

/** A layer at a place: damping in a bay, a closed hole, any other layer on the whole panel. */
public record Spot(Layer layer, Place place) implements Comparable<Spot> {

    @Override
    public int compareTo(Spot other) {
        int byLayer = layer.compareTo(other.layer);
        return byLayer != 0 ? byLayer : place.compareTo(other.place);
    }
}
