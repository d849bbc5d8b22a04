package unthrum.facts;

import unthrum.material.Layer;

/** A reason for a layer at a place. */
public record Want(Place place, Layer layer) implements Conclusion {
}
