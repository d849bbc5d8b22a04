package unthrum.effect;

import java.util.List;
import java.util.OptionalDouble;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;
import unthrum.survey.Aim;

/**
 * What the layers do to the vehicle.
 *
 * @param gains aim by aim, in the client's order
 * @param next  for each aim that a formula tells, the panel that now gives most of what is left: the next work belongs there
 * @param least what more would have to bring
 */
public record VehicleEffect(Load load, List<AimGain> gains, List<MostLeft> next, Least least) {

    /**
     * @param height  of the centre of the added mass above the ground; none where nothing was added
     * @param payload share of the payload left that it takes; none where none is left
     */
    public record Load(@Measured(Dimension.MASS) double mass, @Measured(Dimension.MASS) double roof,
                       @Measured(Dimension.LENGTH) OptionalDouble height,
                       @Measured(Dimension.SHARE) OptionalDouble payload) {
    }

    /**
     * What one more kilogram and one more unit of money must take of all that the client wants rid of; what takes less is
     * left out.
     */
    public record Least(@Measured(Dimension.SHARE) double kilogram, @Measured(Dimension.SHARE) double money) {
    }

    /** @param share of what all panels together still give off or let through for the aim */
    public record MostLeft(Aim aim, String panel, @Measured(Dimension.SHARE) double share, boolean treated) {
    }
}
