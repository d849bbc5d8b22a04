package unthrum.physics;

import java.util.OptionalDouble;

/** Something airtight between the noise and the ear. */
public sealed interface Partition permits Leaf, DoubleLeaf {
    /** Frequencies at which a band is sampled; odd, so that the centre is one of them. */
    int SAMPLES = 5;

    /** A bay blocks by its mass only from this multiple of its first resonance up (common practice, no source). */
    double MASS_CONTROLLED_FROM = 2;

    /** Transmission loss at one frequency in Hz, field incidence, dB. */
    double transmissionLoss(double frequency);

    /** Transmission loss of a third-octave band, dB: the energy mean of the transmission over the band. */
    default double transmissionLoss(ThirdOctave band) {
        double transmission = 0;
        for (int i = 0; i < SAMPLES; i++) {
            double position = (i + 0.5) / SAMPLES;
            double frequency = band.lowerEdge() * Math.pow(band.upperEdge() / band.lowerEdge(), position);
            transmission += CompositeLoss.transmission(transmissionLoss(frequency));
        }
        return CompositeLoss.loss(transmission / SAMPLES);
    }

    /**
     * The same, but empty where the formulas do not hold: below twice the first resonance of the bay its stiffness
     * and its ringing decide, not its mass.
     *
     * @param firstResonance of the bay, Hz
     */
    default OptionalDouble transmissionLoss(ThirdOctave band, double firstResonance) {
        return band.centre() < MASS_CONTROLLED_FROM * firstResonance
                ? OptionalDouble.empty()
                : OptionalDouble.of(transmissionLoss(band));
    }
}
