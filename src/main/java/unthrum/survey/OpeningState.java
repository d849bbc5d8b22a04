package unthrum.survey;

/** Whether a hole is open or closed today. */
public enum OpeningState {
    OPEN, CLOSED
}
