package unthrum.facts;

import unthrum.material.Layer;

/** How two layers of one layup hang together. */
public record Pairing(Place place, Layer layer, Tie tie, Layer other) implements Conclusion {

    /** The two ways. */
    public enum Tie {
        /** The layer is useless without the other. */
        NEEDS("is useless without"),
        /** The layer and the other are never together. */
        NEVER_WITH("never goes together with");

        private final String phrase;

        Tie(String phrase) {
            this.phrase = phrase;
        }

        public String phrase() {
            return phrase;
        }
    }
}
