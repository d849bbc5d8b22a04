package unthrum.facts;

import java.util.Set;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;
import unthrum.reading.Words;
import unthrum.survey.OpeningKind;
import unthrum.survey.OpeningState;

/** A hole in the panel. Size is its diameter or its longer side. */
public record Opening(
        String panel,
        int number,
        OpeningKind kind,
        @KnownAs("opening size") @Measured(Dimension.LENGTH) double size,
        @KnownAs("opening count") int count,
        @KnownAs("opening state") OpeningState state,
        @KnownAs("must stay open") boolean staysOpen,
        Set<String> assumed) implements Fact {
    @Override
    public Place place() {
        return new Place(panel, Words.of(kind) + " " + number);
    }
}
