package unthrum.facts;

import unthrum.reading.Dimension;
import unthrum.reading.Measured;

/**
 * What a usual barrier would do if floated in the room there is: the depth left for foam under it and the
 * resonance of skin, foam and barrier, above which it floats.
 */
public record Decoupled(
        String panel,
        @Measured(Dimension.LENGTH) double depth,
        @Measured(Dimension.FREQUENCY) double resonance) implements Fact {
}
