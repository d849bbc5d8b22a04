package unthrum.survey;

/** The metal of a skin. */
public enum Metal {
    STEEL, ALUMINIUM
}
