package unthrum.effect;

import java.util.Optional;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;

/**
 * What the layers add to a panel.
 *
 * @param height above the ground, as usual for the body and the zone
 * @param lid    for a hinged lid on springs or struts
 */
public record MassEffect(@Measured(Dimension.MASS) double mass, @Measured(Dimension.LENGTH) double height,
                         Optional<LidLoad> lid) {

    /** What the lid's holder still bears without and with the layers. */
    public record LidLoad(@Measured(Dimension.MASS) double margin, @Measured(Dimension.MASS) double left) {

        /** Whether the lid will come down by itself. */
        public boolean sinks() {
            return left < 0;
        }
    }
}
