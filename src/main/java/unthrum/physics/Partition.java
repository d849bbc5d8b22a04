package unthrum.physics;

/** Something airtight between the noise and the ear. */
public sealed interface Partition permits Leaf, DoubleLeaf {

    /** A bay blocks by its mass only from this multiple of its first resonance up (common practice, no source). */
    double MASS_CONTROLLED_FROM = 2;

    /** Share of the incident sound power that passes at a frequency in Hz, field incidence, above nought to one. */
    double passed(double frequency);

    /**
     * How far the transmission loss of a band may be off either way, dB: nine of ten values that the formula was held
     * against lie within it. What they are the class says.
     */
    double uncertainty(ThirdOctave band);

    /**
     * Both at once.
     *
     * @param passed      share of the power in a third octave
     * @param uncertainty dB either way
     */
    record Told(double passed, double uncertainty) {
    }

    default Told told(ThirdOctave band) {
        return new Told(passed(band), uncertainty(band));
    }

    /** Whether the formula was held against published measurements of such walls. */
    boolean measured();

    /** Share of the incident sound power that passes in a third octave: the mean over the band. */
    double passed(ThirdOctave band);

    /** Transmission loss at one frequency, field incidence, dB. */
    default double transmissionLoss(double frequency) {
        return CompositeLoss.loss(passed(frequency));
    }

    /** Transmission loss of a third octave, dB. */
    default double transmissionLoss(ThirdOctave band) {
        return CompositeLoss.loss(passed(band));
    }
}
