package unthrum.effect;

import unthrum.physics.Estimate;
import unthrum.physics.ThirdOctave;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;

/** Transmission loss of a panel in one third octave, or why it cannot be told there. */
public record Blocking(ThirdOctave band, Estimate<Losses> losses) {

    /**
     * @param bare        without layers, holes as found
     * @param holesAsFound with the layers, holes as found
     * @param treated     with the layers and with the holes closed that will be
     * @param uncertainty of each of them either way; of their difference hardly less
     * @param paths       where the sound that still passes goes through
     */
    public record Losses(
            @Measured(Dimension.LEVEL) double bare,
            @Measured(Dimension.LEVEL) double holesAsFound,
            @Measured(Dimension.LEVEL) double treated,
            @Measured(Dimension.LEVEL) double uncertainty,
            Paths paths) {

        public double gain() {
            return treated - bare;
        }

        /** What closing the holes brings under these layers. */
        public double gainOfClosing() {
            return treated - holesAsFound;
        }
    }

    /** Shares of the sound power that passes, together one: open holes, strips without a barrier, and the barrier. */
    public record Paths(
            @Measured(Dimension.SHARE) double holes,
            @Measured(Dimension.SHARE) double withoutBarrier,
            @Measured(Dimension.SHARE) double barrier) {
    }
}
