package unthrum.facts;

import java.util.Set;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;
import unthrum.reading.Words;
import unthrum.survey.FixingKind;

/** Something clipped, bolted or bearing on the metal. */
public record Fixing(
        String panel,
        int number,
        FixingKind kind,
        @KnownAs("fixing size") @Measured(Dimension.LENGTH) double size,
        @KnownAs("fixing count") int count,
        Set<String> assumed) implements Fact {
    @Override
    public Place place() {
        return new Place(panel, Words.of(kind) + " " + number);
    }
}
