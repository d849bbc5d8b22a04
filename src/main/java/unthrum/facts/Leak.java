package unthrum.facts;

import unthrum.reading.Dimension;
import unthrum.reading.Measured;

/** What the open holes that may be closed cost a panel as a wall against sound. */
public record Leak(
        String panel,
        @Measured(Dimension.SHARE) double openShare,
        @Measured(Dimension.LEVEL) double cap,
        @Measured(Dimension.LEVEL) double cost) implements Fact {
}
