package unthrum.survey;

import java.util.Optional;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;
import unthrum.reading.Quantity;
import unthrum.reading.Says;

/** Material on the shelf: whole sheets, or a length left on a roll. */
public record StockEntry(
        @Says("The material's name in the catalogue") String material,
        Optional<Integer> sheets,
        @Measured(value = Dimension.LENGTH, from = "10 mm", to = "100 m") Optional<Quantity> length) {
}
