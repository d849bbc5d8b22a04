package unthrum.survey;

import java.util.Optional;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;
import unthrum.reading.Money;
import unthrum.reading.Quantity;
import unthrum.reading.Says;

/** The client's bounds on the whole job. */
public record Limits(
        @Measured(value = Dimension.MASS, from = "0 kg", to = "2000 kg") Optional<Quantity> addedMass,
        @Says("Of the added mass, what the roof may take")
        @Measured(value = Dimension.MASS, from = "0 kg", to = "500 kg") Optional<Quantity> roofMass,
        @Says("An amount and its ISO 4217 code, such as 550 EUR") Optional<Money> money) {
}
