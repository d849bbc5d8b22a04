package unthrum.facts;

import java.util.Set;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;
import unthrum.survey.Face;

/** The room between bare metal and whatever comes back over it. */
public record Room(
        String panel,
        @Measured(Dimension.LENGTH) double clearance,
        @KnownAs("clearance to") Face to,
        boolean liningOnRibs,
        Set<String> assumed) implements Fact {
}
