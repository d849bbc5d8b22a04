package unthrum.effect;

import unthrum.reading.Dimension;
import unthrum.reading.Measured;
import unthrum.survey.Aim;

/**
 * What one panel has to do with an aim.
 *
 * @param bare  its share of what the bare vehicle gives off or lets through for the aim
 * @param taken the share of the bare vehicle's that the layup takes; negative where it lets more through
 */
public record PanelGain(Aim aim, @Measured(Dimension.SHARE) double bare, @Measured(Dimension.SHARE) Range taken) {

    /** Whether the aim loses by the layup. */
    public boolean loses() {
        return taken.about() < 0;
    }
}
