package unthrum.survey;

/** What the middle of a bay answers to a knuckle. */
public enum Tap {
    RINGS, DULL, DEAD, NOT_TAPPED
}
