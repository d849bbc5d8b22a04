package unthrum.reading;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A small invented vocabulary: what lies on a workshop's shelf. */
record Shelf(
        @Says("A name for the shelf") String shelf,
        Optional<Place> place,
        @Measured(value = Dimension.LENGTH, from = "100 mm", to = "2 m") Optional<Quantity> width,
        @Count(min = 2, max = 2) @Measured(value = Dimension.LENGTH, from = "1 mm", to = "1 m")
        Optional<List<Quantity>> opening,
        @Measured(value = Dimension.TEMPERATURE, from = "-30 degC", to = "60 degC") Optional<Quantity> coldest,
        @Measured(value = Dimension.TEMPERATURE, from = "5 degC", to = "60 degC") Optional<Quantity> warmest,
        @Measured(Dimension.LEVEL) Optional<Quantity> louder,
        @Measured(Dimension.SURFACE_DENSITY) Optional<Quantity> heaviest,
        @Measured(Dimension.NUMBER) Optional<Quantity> lossFactor,
        Optional<Quantity> anything,
        Optional<Money> price,
        @Between(from = 1, to = 9) Optional<Integer> boards,
        Optional<Double> slope,
        Optional<Boolean> locked,
        Optional<LocalDate> checked,
        Optional<List<Good>> goods,
        @Count(min = 1, max = 3) Optional<List<Colour>> colours,
        @Measured(Dimension.MASS) Optional<Map<String, Quantity>> weights,
        Optional<Map<String, String>> notes) {

    enum Colour { RED, PALE_GREEN, BLUE }

    enum Kind { FOAM, BUTYL_SHEET, NOTHING }

    /** May be given as its kind alone. */
    record Good(Kind kind, Optional<Integer> pieces) {
    }

    /** May not: its second part is required. It knows of no blue attic. */
    record Place(Colour wall, String room) {
        Place {
            if (wall.equals(Colour.BLUE) && room.equals("attic")) {
                throw new IllegalArgumentException("a blue wall in the attic");
            }
        }
    }
}
