package unthrum.facts;

import unthrum.reading.Dimension;
import unthrum.reading.Measured;

/**
 * What a usual barrier would do if floated in the room there is: the depth left for foam under it, the resonance of
 * skin, foam and barrier, and what it gains on average from 250 Hz to 4 kHz over the same barrier laid direct.
 */
public record Decoupled(
        String panel,
        @Measured(Dimension.LENGTH) double depth,
        @Measured(Dimension.FREQUENCY) double resonance,
        @Measured(Dimension.LEVEL) double gain) implements Fact {
}
