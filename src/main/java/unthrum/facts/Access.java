package unthrum.facts;

import java.util.Set;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;
import unthrum.survey.Reach;

/** How far a hand with a cloth and a roller can reach. */
public record Access(
        String panel,
        Reach reach,
        @Measured(Dimension.SHARE) double reachable,
        boolean liftsOut,
        Set<String> assumed) implements Fact {
}
