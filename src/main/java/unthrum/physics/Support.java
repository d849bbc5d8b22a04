package unthrum.physics;

/** How a bay's four edges are held. Real edges lie between; on a curved bay sliding or fixed matters most. */
public enum Support {
    /** Free to turn and free to slide in the skin's plane. */
    HINGED_SLIDING(false, false),
    /** Held against turning, free to slide. */
    CLAMPED_SLIDING(true, false),
    /** Free to turn, unable to slide. */
    HINGED_FIXED(false, true),
    /** Held against turning and sliding. */
    CLAMPED_FIXED(true, true);

    private final boolean clamped;
    private final boolean fixed;

    Support(boolean clamped, boolean fixed) {
        this.clamped = clamped;
        this.fixed = fixed;
    }

    public boolean clamped() {
        return clamped;
    }

    public boolean fixed() {
        return fixed;
    }
}
