package unthrum.cutting;

/** How the knife may run. */
public enum CutRule {
    /** Cuts may stop and turn anywhere, as with shears or a knife along a marked line. */
    FREE,
    /** Every cut runs from edge to edge of the part in hand, as with a long straight edge. */
    GUILLOTINE
}
