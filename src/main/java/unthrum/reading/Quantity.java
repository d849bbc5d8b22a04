package unthrum.reading;

/** A measured value in SI with the kind of quantity it is. */
public record Quantity(double si, Dimension dimension) {
    @Override
    public String toString() {
        return dimension.show(si);
    }
}
