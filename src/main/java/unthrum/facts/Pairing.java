package unthrum.facts;

import java.util.Set;
import unthrum.material.Layer;

/** How two layers of one layup hang together. */
public record Pairing(Place place, Layer layer, Tie tie, Layer other) implements Conclusion {

    /** Whether a layup of these layers keeps it. */
    public boolean admits(Set<Layer> layers) {
        return !layers.contains(layer) || layers.contains(other) == (tie == Tie.NEEDS);
    }

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
