package unthrum.knowledge;

import java.util.List;
import java.util.Optional;
import unthrum.reading.Count;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;
import unthrum.reading.Quantity;
import unthrum.survey.Aim;
import unthrum.survey.NoiseSource;
import unthrum.survey.Zone;

/** What one of the client's aims is measured by. */
public record AimEntry(Aim aim, String means, Meter measuredBy, Optional<Heard> heard, String source) {

    /** The quantity of which a layup takes a share. */
    public enum Meter {
        SOUND, HEAT_IN, HEAT_OUT, WETNESS,
        /** No formula: the trade's weights stand in. */
        TRADE
    }

    /** How a level is weighed. */
    public enum Weighting { NONE, A_WEIGHTED }

    /** What is shaken. */
    public enum Shakes { ALL, ROOF }

    /**
     * A sound and its two ways to the ear.
     *
     * @param shaken   the part of the bare vehicle's that the shaken shell gives off; the rest comes through the air
     * @param orders   multiples of the firing frequency between which it lies
     * @param shaking  forces on the shell by third octaves, against each other
     * @param beside   sources beside which a panel gets the airborne sound in full
     * @param zones    zones that do so whatever the survey names beside them
     * @param airborne sound outside by third octaves, against each other
     */
    public record Heard(Weighting weighting, @Measured(Dimension.SHARE) Quantity shaken, Shakes shakes,
                        @Measured(Dimension.NUMBER) @Count(min = 2, max = 2) Optional<List<Quantity>> orders,
                        List<Level> shaking, List<NoiseSource> beside, Optional<List<Zone>> zones,
                        List<Level> airborne) {
    }

    /** One point of a spectrum. */
    public record Level(@Measured(Dimension.FREQUENCY) Quantity at, @Measured(Dimension.LEVEL) Quantity level) {
    }

    record File(List<AimEntry> aims) {
    }
}
