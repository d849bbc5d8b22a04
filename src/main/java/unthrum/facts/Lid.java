package unthrum.facts;

import java.util.Set;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;
import unthrum.survey.Holder;

/** A hinged lid and the mass that its holder still bears. */
public record Lid(
        String panel,
        Holder holder,
        @KnownAs("lid margin") @Measured(Dimension.MASS) double margin,
        Set<String> assumed) implements Fact {
}
