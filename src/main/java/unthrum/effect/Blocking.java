package unthrum.effect;

import java.util.Optional;
import unthrum.physics.Estimate;
import unthrum.physics.ThirdOctave;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;

/** Transmission loss of a panel in one third octave, or why it cannot be told there. */
public record Blocking(ThirdOctave band, Estimate<Losses> losses) {

    /**
     * @param bare         without layers, holes as found
     * @param holesAsFound with the layers, holes as found
     * @param treated      with the layers and with the holes closed that will be
     * @param uncertainty  of each of them either way; of their difference hardly less
     * @param floated      the barrier on its foam, where there is one
     * @param paths        where the sound that still passes goes through
     */
    public record Losses(
            @Measured(Dimension.LEVEL) double bare,
            @Measured(Dimension.LEVEL) double holesAsFound,
            @Measured(Dimension.LEVEL) double treated,
            @Measured(Dimension.LEVEL) double uncertainty,
            Optional<Floated> floated,
            Paths paths) {

        /** Negative where the layers let more through than the bare metal, as near the resonance of a floated barrier. */
        public double gain() {
            return treated - bare;
        }

        /** What closing the holes brings under these layers. */
        public double gainOfClosing() {
            return treated - holesAsFound;
        }
    }

    /**
     * A barrier on a spring.
     *
     * @param resonance of skin, foam and barrier: near it the panel holds back least
     * @param direct    what the panel would hold back if the barrier lay straight on the skin, all else alike
     * @param measured  whether such walls were measured and compared; else these figures are computed only
     */
    public record Floated(
            @Measured(Dimension.FREQUENCY) double resonance,
            @Measured(Dimension.LEVEL) double direct,
            boolean measured) {
    }

    /** Shares of the sound power that passes, together one: open holes, strips without a barrier, and the barrier. */
    public record Paths(
            @Measured(Dimension.SHARE) double holes,
            @Measured(Dimension.SHARE) double withoutBarrier,
            @Measured(Dimension.SHARE) double barrier) {
    }
}
