package unthrum.drill;

/** How an answer did, the worst last. */
public enum Result {
    RIGHT, WRONG_REASON, WRONG
}
