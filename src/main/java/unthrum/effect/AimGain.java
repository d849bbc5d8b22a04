package unthrum.effect;

import java.util.List;
import unthrum.physics.Estimate;
import unthrum.physics.ThirdOctave;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;
import unthrum.survey.Aim;

/**
 * What an aim gains by the surveyed panels alone. It is no level in the cabin: what comes another way stays as it is.
 *
 * @param gains each kind of gain that counts for the aim, or why it cannot be told
 */
public record AimGain(Aim aim, List<Estimate<? extends Gain>> gains) {

    /** One kind of gain. */
    public sealed interface Gain permits CalmerBays, BetterWalls, LessHeat, DrierFaces {
    }

    /**
     * Ringing in the aim's band: the sum over all bays, each counted by how strongly it is driven there.
     *
     * @param treatedShare  of the drive that meets treated bays
     * @param treatedBays   dB by which these alone fall
     * @param allBays       dB by which all bays together fall, the untreated among them
     * @param unknownShare  of the drive that meets treated bays whose gain cannot be told; counted as no gain
     */
    public record CalmerBays(@Measured(Dimension.SHARE) double treatedShare,
                             @Measured(Dimension.LEVEL) Range treatedBays,
                             @Measured(Dimension.LEVEL) Range allBays,
                             @Measured(Dimension.SHARE) double unknownShare) implements Gain {
    }

    /**
     * Airborne sound through the panels that stand next to its source, side by side as one wall.
     *
     * @param outside panels for which the loss in this band cannot be told; left out
     */
    public record BetterWalls(ThirdOctave band, @Measured(Dimension.LEVEL) double before,
                              @Measured(Dimension.LEVEL) double after,
                              @Measured(Dimension.LEVEL) double uncertainty, List<String> outside) implements Gain {

        public double gain() {
            return after - before;
        }
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
