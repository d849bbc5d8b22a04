package unthrum.survey;

/** How much of a panel can be reached and cleaned. */
public enum Reach {
    OPEN, PART, NONE
}
