package unthrum.facts;

import java.util.Set;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;
import unthrum.survey.HeatSource;

/** The heat of the place at its worst. */
public record Heat(
        String panel,
        @KnownAs("heat from") HeatSource from,
        @Measured(Dimension.TEMPERATURE) double peak,
        Set<String> assumed) implements Fact {
}
