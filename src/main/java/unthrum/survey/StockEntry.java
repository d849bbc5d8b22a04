package unthrum.survey;

import java.util.Optional;
import unthrum.reading.Between;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;
import unthrum.reading.Quantity;
import unthrum.reading.Says;

/** Material on the shelf: whole sheets, or a length left on a roll. */
public record StockEntry(
        @Says("The material's name in the catalogue") String material,
        @Between(from = 1, to = 10_000) Optional<Integer> sheets,
        @Measured(value = Dimension.LENGTH, from = "10 mm", to = "100 m") Optional<Quantity> length) {
}
