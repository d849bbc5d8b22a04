package unthrum.reasoning;

import unthrum.effect.Layup;
import unthrum.material.Layer;

/** What a panel gets. */
public enum Verdict {
    /** A layer over the whole face. */
    COVER,
    /** Damping patches in the middle of bays. */
    PATCH,
    /** Nothing: nothing is wanted, or nothing that is wanted may or can be there. */
    LEAVE_BARE,
    /** It cannot be reached or prepared yet. */
    HOLD,
    /** A measurement decides. */
    ASK;

    /** The verdict on a panel that gets these layers; where it gets none, what it was. */
    Verdict with(Layup layup) {
        if (this == HOLD || layup.isEmpty()) {
            return this == PATCH || this == COVER ? LEAVE_BARE : this;
        }
        return layup.layers().stream().allMatch(l -> l.layer() == Layer.DAMPING) ? PATCH : COVER;
    }
}
