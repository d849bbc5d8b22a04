package unthrum.material;

import unthrum.reading.Words;

/** The kinds of layer, in the order in which they lie from the metal inward. */
public enum Layer {
    /** A ventilated shield on the hot side, clear of the metal. */
    HEAT_SHIELD,
    DAMPING,
    DECOUPLER,
    BARRIER,
    INSULATION,
    ABSORBER,
    WEAR_FACE,
    /** Plugs, grommets and tape that close what must not leak. */
    SEAL,
    /** Stands for whichever layer in a veto or a limit; no material is of it. */
    ANY;

    /** The layer as it is named in a sentence: 'wear face'. */
    public String word() {
        return Words.of(this);
    }

    /** Whether a rule's word for a layer means this one. */
    public boolean matches(Layer named) {
        return named == ANY || named == this;
    }
}
