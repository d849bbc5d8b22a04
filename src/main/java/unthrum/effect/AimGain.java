package unthrum.effect;

import java.util.List;
import unthrum.physics.Estimate;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;
import unthrum.survey.Aim;

/**
 * What an aim gains by the surveyed panels alone. It is no level in the cabin: what comes another way stays as it is.
 *
 * @param weight what the aim counts among those that a formula tells
 * @param taken  the share of what the bare vehicle gives off or lets through that the layers take, or why it cannot be
 *               told
 * @param panels each panel's part in it, in the survey's order; empty where it cannot be told
 * @param gains  each kind of gain by itself
 */
public record AimGain(Aim aim, @Measured(Dimension.SHARE) double weight, Estimate<Range> taken, List<PanelPart> panels,
                      List<Gain> gains) {

    /** One panel's part: its share of the bare vehicle's, and what its layers take, as a share of the bare vehicle's. */
    public record PanelPart(String panel, @Measured(Dimension.SHARE) double bare, @Measured(Dimension.SHARE) Range taken) {
    }

    /** One kind of gain. */
    public sealed interface Gain permits LessSound, LessHeat, DrierFaces {
    }

    /**
     * Sound on one of its ways.
     *
     * @param shaken whether the shaken shell gives it off; else it comes through the air
     * @param taken  the share of what comes on this way bare
     */
    public record LessSound(boolean shaken, @Measured(Dimension.SHARE) Range taken) implements Gain {
    }

    /**
     * Heat through all panels for which it can be told, W.
     *
     * @param uncertainty share of each by which it may be off either way
     */
    public record LessHeat(double wattsBefore, double wattsAfter, @Measured(Dimension.SHARE) double uncertainty,
                           List<String> outside) implements Gain {
    }

    /**
     * Area of metal on which room air meets a face below its dew point, m².
     *
     * @param depthBefore K by which such faces lie below it, on average over all panels
     * @param worst       least margin over the dew point on any panel afterwards, K
     */
    public record DrierFaces(@Measured(Dimension.AREA) double wetBefore,
                             @Measured(Dimension.AREA) double wetAfter,
                             @Measured(Dimension.NUMBER) double depthBefore,
                             @Measured(Dimension.NUMBER) double depthAfter, @Measured(Dimension.NUMBER) double worst,
                             String worstPanel) implements Gain {
    }
}
