package unthrum.survey;

/** What rattles on a panel. */
public enum Loose {
    TRIM, CABLE, BRACKET, LINING, ROD
}
