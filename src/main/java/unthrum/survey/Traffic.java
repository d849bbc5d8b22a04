package unthrum.survey;

/** What passes over or is dragged on the finished face. */
public enum Traffic {
    NONE, FEET, CARPET, MAT, DRAWERS, DRAGGED_LOADS
}
