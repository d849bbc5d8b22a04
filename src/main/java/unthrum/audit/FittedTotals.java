package unthrum.audit;

/** What the fitted layers add up to: kg, kg of it on roofs, and the price of what was used without offcuts. */
public record FittedTotals(double mass, double roof, double price) {
}
