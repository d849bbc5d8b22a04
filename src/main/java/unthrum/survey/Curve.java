package unthrum.survey;

/** How a panel is curved: crowned bulges both ways, rolled only one way. */
public enum Curve {
    FLAT, CROWNED, ROLLED
}
