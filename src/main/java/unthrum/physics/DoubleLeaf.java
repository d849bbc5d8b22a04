package unthrum.physics;

/**
 * Two leaves with a spring between them: a skin, a decoupler and a heavy barrier.
 *
 * <p>What passes is what both leaves would pass stuck together, times 1/G + B. G is what the spring gains: under fibre
 * |1 − g·x²/(1+iη)|² with x = f/f₀, η its loss factor and g = (1+(f/f_l)⁴)^(−1/4), f_l where standing waves across it
 * begin; on foam the waves across it are in it. B are the {@link Bridges}. Far below f₀ that is the mass law, near it less,
 * and above it the two leaves add up (Sharp; Fahy and Gardonio), until the ties cap it. The joint g is this project's own.
 *
 * <p>Filled with fibre: held against 81 published octave values of 13 walls with 45 to 240 mm between leaves of 8 to
 * 90 kg/m² (table in the tests), mean error −0.4 dB, root mean square 5.2 dB. On foam no published digits were found:
 * there it is held against a transfer-matrix solution (in the tests), within 3 dB for the same foam; see
 * {@link #springUncertainty}.
 *
 * @param bridges what ties the leaves together
 */
public record DoubleLeaf(Leaf skin, Leaf barrier, Decoupler decoupler, Bridges bridges) implements Partition {

    /** How much of each leaf's own loss at coincidence is seen through both: the best fit to measured double leaves. */
    private static final double COINCIDENCE = 0.43;

    /** The shallowest fibre that was measured between two leaves, m. */
    private static final double MEASURED_DEPTH = 0.045;

    /** Mass-spring-mass resonance f₀ = (1/2π)·√(s(m₁+m₂)/(m₁m₂)), Hz. Hopkins, Sound Insulation, section 4.3.5. */
    public double resonance() {
        double m1 = skin.surfaceMass();
        double m2 = barrier.surfaceMass();
        return Math.sqrt(decoupler.stiffness() * (m1 + m2) / (m1 * m2)) / (2 * Math.PI);
    }

    @Override
    public double passed(double frequency) {
        return Math.min(1, stuck(frequency) * (1 / springGain(frequency) + bridges.passed(skin, barrier)));
    }

    /** The mass changes slowly over a band, the spring does not. */
    @Override
    public double passed(ThirdOctave band) {
        return Math.min(1, stuck(band) * (Samples.mean(band, f -> 1 / springGain(f)) + bridges.passed(skin, barrier)));
    }

    /** What would pass in a band if both leaves were stuck together. */
    public double stuck(ThirdOctave band) {
        return stuck(band.centre());
    }

    private double stuck(double frequency) {
        double together = MassLaw.passed(skin.surfaceMass() + barrier.surfaceMass(), frequency, skin.air());
        double cost = skin.coincidenceCost(frequency) + barrier.coincidenceCost(frequency);
        return cost == 0 ? together : together * Math.pow(10, COINCIDENCE * cost / 10);
    }

    /** By how much less passes than through both leaves stuck together, below one near the resonance. */
    private double springGain(double frequency) {
        return decoupler.fibre() ? filledGain(frequency) : foamGain(frequency);
    }

    /** |1 − g·x²/(1+iη)|². */
    private double filledGain(double frequency) {
        double loss = decoupler.lossFactor();
        double standing = frequency / decoupler.limit();
        double x = frequency / resonance();
        double moved = x * x / Math.sqrt(Math.sqrt(1 + standing * standing * standing * standing));
        return ((1 - moved) * (1 - moved) + loss * loss) / (1 + loss * loss);
    }

    /**
     * |cos y − (μ/m) y sin y|², y = ωd/v·(1 − iη/2) the waves across the foam, m its mass and μ = m₁m₂/(m₁+m₂): for
     * small y that is |1 − x²/(1+iη)|² too.
     */
    private double foamGain(double frequency) {
        double m1 = skin.surfaceMass();
        double m2 = barrier.surfaceMass();
        double across = frequency / decoupler.limit();
        double lost = across * decoupler.lossFactor() / 2;
        double heavy = m1 * m2 / ((m1 + m2) * decoupler.mass());
        double growth = Math.exp(lost);
        double even = (growth + 1 / growth) / 2;
        double odd = (growth - 1 / growth) / 2;
        double sine = Math.sin(across);
        double cosine = Math.cos(across);
        double real = cosine * even - heavy * (across * sine * even - lost * cosine * odd);
        double imaginary = sine * odd + heavy * (across * cosine * odd + lost * sine * even);
        return real * real + imaginary * imaginary;
    }

    /**
     * Movement of the barrier over that of a shaken skin, squared: |1/(1 − x²/(1+iη))|² with x = f/f₂, f₂ the barrier
     * alone on its spring. Above one near f₂. Ties add what they carry across.
     */
    public double carried(double frequency) {
        double loss = decoupler.lossFactor();
        double own = Math.sqrt(decoupler.stiffness() / barrier.surfaceMass()) / (2 * Math.PI);
        double moved = frequency / own * (frequency / own);
        return (1 + loss * loss) / ((1 - moved) * (1 - moved) + loss * loss) + bridges.piston(barrier);
    }

    /** The same in a third octave: the mean over the band. */
    public double carried(ThirdOctave band) {
        return Samples.mean(band, this::carried);
    }

    @Override
    public double uncertainty(ThirdOctave band) {
        double mass = skin.surfaceMass() + barrier.surfaceMass();
        return decoupler.fibre() ? filled(band.centre(), mass)
                : Math.hypot(Leaf.limp(mass).uncertainty(band), springUncertainty(band.centre() / resonance()));
    }

    /** By octaves up to 125 Hz, 500 Hz, 2 kHz and above, and by mass, as those 81 values show. */
    private static double filled(double frequency, double mass) {
        boolean light = mass < 30;
        if (frequency < 177) {
            return light ? 7.8 : 5.4;
        }
        if (frequency < 707) {
            return light ? 6.7 : 4.6;
        }
        if (frequency < 2828) {
            return light ? 8 : 7;
        }
        return light ? 8.6 : 4.4;
    }

    /**
     * How far the spring of foam may change that, dB, by frequency over resonance: what the transfer-matrix solution
     * shows where the foam is half, as and twice as stiff as told.
     */
    double springUncertainty(double ratio) {
        if (ratio < 0.4) {
            return 1.4;
        }
        if (ratio < 0.7) {
            return 4.2;
        }
        return ratio >= 1.4 && ratio < 3 ? 8.2 : 7;
    }

    @Override
    public boolean measured() {
        return decoupler.fibre() && decoupler.depth() >= MEASURED_DEPTH;
    }
}
