package unthrum.facts;

import unthrum.reading.Dimension;
import unthrum.reading.Measured;

/** What the sun does to the panel: how hot the metal gets and what flows in through it bare, the trim back on. */
public record Sun(
        String panel,
        @Measured(Dimension.TEMPERATURE) double metal,
        @Measured(Dimension.HEAT_FLOW) double inflow) implements Fact {
}
