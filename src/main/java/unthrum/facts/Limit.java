package unthrum.facts;

import unthrum.material.Layer;
import unthrum.reading.Dimension;

/** A bound on a quantity of the layup, or of one kind of layer in it. Traits carry the bound 1. */
public record Limit(Place place, Layer layer, Bound bound, double value) implements Conclusion {

    /** A trait limit: the layer must have the trait. */
    public Limit(Place place, Layer layer, Bound trait) {
        this(place, layer, trait, 1);
    }

    /** What may be bounded. */
    public enum Bound {
        /** The whole stack from the metal toward the trim, at most. */
        STACK_THICKNESS("the stack is at most", Dimension.LENGTH),
        /** One layer's own thickness, at most. */
        LAYER_THICKNESS("thickness at most", Dimension.LENGTH),
        /** The hottest that every layer must bear, at least. */
        SERVICE_TEMPERATURE("bears at least", Dimension.TEMPERATURE),
        /** The coldest that every layer must bear, at most. */
        SERVICE_COLD("bears cold down to", Dimension.TEMPERATURE),
        /** Added mass on the panel, at most. */
        MASS("adds at most", Dimension.MASS),
        /** Surface density of a layer, at least. */
        HEAVY_ENOUGH("weighs at least", Dimension.SURFACE_DENSITY),
        /** Surface density of a layer, at most. */
        LIGHT_ENOUGH("weighs at most", Dimension.SURFACE_DENSITY),
        /** The share of the place that the layer covers, at most. */
        COVERAGE("covers at most", Dimension.SHARE),
        /** Burning rate, at most; a material with no statement fails. */
        BURN_RATE("burns no faster than", Dimension.BURN_RATE),
        CLOSED_CELL("must be closed-cell or solid", Dimension.NUMBER),
        LIFTS_OUT("must come off again", Dimension.NUMBER),
        NOT_BONDED("must not be stuck on", Dimension.NUMBER),
        HELD("must be stuck or fastened", Dimension.NUMBER),
        BEARS_WEAR("must bear feet, tools and dragged loads", Dimension.NUMBER),
        PLAIN_FACE("needs no wear-proof face", Dimension.NUMBER),
        BRIGHT_FACE("must show a bright face", Dimension.NUMBER);

        private final String phrase;
        private final Dimension dimension;

        Bound(String phrase, Dimension dimension) {
            this.phrase = phrase;
            this.dimension = dimension;
        }

        public Dimension dimension() {
            return dimension;
        }

        /** The bound in words: 'the stack is at most 8 mm'. */
        public String say(double value) {
            return dimension == Dimension.NUMBER ? phrase : phrase + " " + dimension.show(value);
        }
    }
}
