package unthrum.reasoning;

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
    ASK
}
