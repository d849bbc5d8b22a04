package unthrum.facts;

import unthrum.reading.Dimension;
import unthrum.reading.Measured;

/** The cold of the bare skin behind its trim in the coldest air, against the dew point of the air inside. */
public record Dew(
        String panel,
        @Measured(Dimension.TEMPERATURE) double skin,
        @Measured(Dimension.TEMPERATURE) double dewPoint,
        @Measured(Dimension.NUMBER) double below) implements Fact {
}
