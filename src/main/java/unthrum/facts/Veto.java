package unthrum.facts;

import unthrum.material.Layer;

/** A reason why a layer must not be at a place; on a part of a panel it keeps only that part bare. */
public record Veto(Place place, Layer layer) implements Conclusion {
}
