package unthrum.facts;

import unthrum.reading.Dimension;
import unthrum.reading.Measured;
import unthrum.reading.Words;
import unthrum.survey.CoverKind;

/** A part that comes off for service. */
public record ServiceCover(
        String panel,
        int number,
        CoverKind kind,
        @Measured(Dimension.AREA) double area) implements Fact {
    @Override
    public Place place() {
        return new Place(panel, Words.of(kind) + " " + number);
    }
}
