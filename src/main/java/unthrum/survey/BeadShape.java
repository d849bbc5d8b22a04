package unthrum.survey;

/** What a bead looks like, cut across. */
public enum BeadShape {
    ROUNDED, FLAT_TOP
}
