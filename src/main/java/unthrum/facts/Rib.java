package unthrum.facts;

import java.util.Set;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;
import unthrum.reading.Words;
import unthrum.survey.RibKind;
import unthrum.survey.Run;

/** A stiffening line: left bare, it divides the panel into bays. */
public record Rib(
        String panel,
        RibKind kind,
        Run runs,
        @Measured(Dimension.LENGTH) double at,
        @KnownAs("rib width") @Measured(Dimension.LENGTH) double breadth,
        Set<String> assumed) implements Fact {
    @Override
    public Place place() {
        return new Place(panel, Words.of(kind) + " at " + Dimension.LENGTH.show(at));
    }
}
