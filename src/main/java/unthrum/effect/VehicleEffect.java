package unthrum.effect;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import unthrum.facts.Place;
import unthrum.physics.ThirdOctave;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;

/**
 * What the layers do to the vehicle.
 *
 * @param gains       aim by aim, in the client's order
 * @param loudestBay  the bay that now gives most of what is left of the ringing: the next damping belongs there
 * @param weakestWall the panel beside a source that now lets most through: the next barrier or plug belongs there
 */
public record VehicleEffect(Load load, List<AimGain> gains, Optional<LoudestBay> loudestBay,
                            Optional<WeakestWall> weakestWall) {

    /**
     * @param height  of the centre of the added mass above the ground; none where nothing was added
     * @param payload share of the payload left that it takes; none where none is left
     */
    public record Load(@Measured(Dimension.MASS) double mass, @Measured(Dimension.MASS) double roof,
                       @Measured(Dimension.LENGTH) OptionalDouble height,
                       @Measured(Dimension.SHARE) OptionalDouble payload) {
    }

    /** @param share of what all bays together still give off for the client's aims */
    public record LoudestBay(Place place, @Measured(Dimension.SHARE) double share, boolean treated) {
    }

    /**
     * @param share of what all panels beside a source still let through in the band
     * @param paths where on the panel
     */
    public record WeakestWall(String panel, ThirdOctave band, @Measured(Dimension.SHARE) double share,
                              @Measured(Dimension.LEVEL) double loss, Blocking.Paths paths) {
    }
}
