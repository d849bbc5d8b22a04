package unthrum.reading;

/** A measured value in SI with the kind of quantity it is. */
public record Quantity(double si, Dimension dimension) {
    /** The quantity that a text such as '8.6 mm' writes; a text that is none is a mistake and throws. */
    public static Quantity of(String text) {
        Outcome outcome = new Measure(null, "", "").read(text);
        if (outcome.value() instanceof Quantity quantity) {
            return quantity;
        }
        throw new IllegalArgumentException("'" + text + "' is no quantity");
    }

    @Override
    public String toString() {
        return dimension.show(si);
    }
}
