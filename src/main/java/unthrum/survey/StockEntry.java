package unthrum.survey;

import java.util.List;
import java.util.Optional;
import unthrum.reading.Between;
import unthrum.reading.Count;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;
import unthrum.reading.Quantity;
import unthrum.reading.Says;

/** Material on the shelf: whole sheets, a length left on a roll, or odd offcuts of one size. */
public record StockEntry(
        @Says("The material's name in the catalogue") String material,
        @Says("Whole sheets, or with a size so many offcuts of it")
        @Between(from = 1, to = 10_000) Optional<Integer> sheets,
        @Says("What is left of a roll")
        @Measured(value = Dimension.LENGTH, from = "10 mm", to = "100 m") Optional<Quantity> length,
        @Says("The two sides of an odd offcut")
        @Count(min = 2, max = 2)
        @Measured(value = Dimension.LENGTH, from = "10 mm", to = "100 m") Optional<List<Quantity>> size) {

    /** How many offcuts of the size there are. */
    public int offcuts() {
        return size.isPresent() ? sheets.orElse(1) : 0;
    }

    /** How many whole sheets there are. */
    public int wholeSheets() {
        return size.isPresent() ? 0 : sheets.orElse(0);
    }
}
