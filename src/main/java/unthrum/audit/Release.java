package unthrum.audit;

/** Whether the vehicle may leave. */
public enum Release { RELEASE, RELEASE_WITH_NOTES, DO_NOT_RELEASE }
