package unthrum.survey;

/** What lies on the paint. */
public enum Dirt {
    CLEAN, DUST, GREASE, WAX
}
