package unthrum.audit;

/** How much a finding weighs, the heaviest first. */
public enum Severity {
    /** Somebody may be hurt. */
    DANGER,
    /** Something is wrong and must be put right. */
    FAULT,
    /** Something lies there for nothing. */
    WASTE,
    /** Nobody has shown that it is right. */
    UNPROVEN;

    public boolean atLeast(Severity other) {
        return compareTo(other) <= 0;
    }
}
