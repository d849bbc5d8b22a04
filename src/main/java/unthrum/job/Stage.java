package unthrum.job;

/** The stages of a job, in their order. */
public enum Stage {
    MAKE_READY, CLEAN, CUT, FIT, PROVE;

    /** Whether its steps are taken area by area, or once for the whole vehicle. */
    boolean isByArea() {
        return this == CLEAN || this == FIT;
    }
}
