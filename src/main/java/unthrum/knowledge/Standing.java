package unthrum.knowledge;

/** How strong a reason is, the strongest first. A weaker one never defeats a stronger one. */
public enum Standing {
    SAFETY, FIT, PHYSICS, PRACTICE, PREFERENCE;

    /** Whether a reason of this standing prevails against one of the other: equals prevail. */
    public boolean prevailsOver(Standing other) {
        return compareTo(other) <= 0;
    }
}
