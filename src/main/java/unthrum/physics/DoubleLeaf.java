package unthrum.physics;

/**
 * Two leaves with a spring between them: a skin, a decoupler and a heavy barrier.
 *
 * <p>What passes is what both leaves would pass stuck together, times 1/G + B. G is what the spring gains: over a deep fill
 * |1 − g·x²/(1+iη)|² with x = f/f₀, η its loss factor and g = (1+(f/f_l)⁴)^(−1/4), f_l where standing waves across it
 * begin; on foam and felt that of {@link FoamSpring}. B are the {@link Bridges}. Far below f₀ that is the mass law, near it
 * less, and above it the two leaves add up (Sharp; Fahy and Gardonio), until the ties cap it. The joint g is this project's
 * own.
 *
 * <p>Filled with fibre: held against 81 published octave values of 13 walls with 45 to 240 mm between leaves of 8 to
 * 90 kg/m² (table in the tests), mean error −0.4 dB, root mean square 5.2 dB. On foam and felt no published digits were
 * found, and how stiff a foam is nobody prints closer than half to twice. So in a band the middle is told between what
 * passes on foam from half to twice as stiff; it is held against a transfer-matrix solution with such foams (in the
 * tests), see {@link #springUncertainty}.
 *
 * @param skin    with half of what lies between
 * @param barrier the same
 * @param bridges what ties the leaves together
 */
public record DoubleLeaf(Leaf skin, Leaf barrier, Decoupler decoupler, Bridges bridges) implements Partition {

    /** How much of each leaf's own loss at coincidence is seen through both: the best fit to measured double leaves. */
    private static final double COINCIDENCE = 0.43;

    /** From where a frequency is around the resonance, and from where above it, as a ratio; half an octave. Our own choice. */
    static final double AROUND = 0.7;
    static final double ABOVE = 1.4;

    /** How stiff foam may be, of what is told; from memory, since makers print no closer range. */
    private static final double[] STIFFNESS = {0.5, 0.71, 1, 1.41, 2};

    /** What passes by a spring that is not known closer, in shares of the power. */
    private record Passed(double least, double most) {
        double middle() {
            return Math.sqrt(least * most);
        }

        /** Either way from the middle, dB. */
        double reach() {
            return 5 * Math.log10(most / least);
        }
    }

    /** Mass-spring-mass resonance f₀ = (1/2π)·√(s(m₁+m₂)/(m₁m₂)), Hz. Hopkins, Sound Insulation, section 4.3.5. */
    public double resonance() {
        double m1 = skin.surfaceMass();
        double m2 = barrier.surfaceMass();
        return Math.sqrt(decoupler.stiffness() * (m1 + m2) / (m1 * m2)) / (2 * Math.PI);
    }

    /** With the spring exactly as stiff as told. */
    @Override
    public double passed(double frequency) {
        double spring = decoupler.fill() ? filled(frequency) : spring(1).passed(frequency);
        return Math.min(1, stuck(frequency) * (spring + bridges.passed(skin, barrier)));
    }

    @Override
    public double passed(ThirdOctave band) {
        return told(band).passed();
    }

    @Override
    public double uncertainty(ThirdOctave band) {
        return told(band).uncertainty();
    }

    /** The mass changes slowly over a band, the spring does not. */
    @Override
    public Told told(ThirdOctave band) {
        double mass = skin.surfaceMass() + barrier.surfaceMass();
        if (decoupler.fill()) {
            return new Told(tied(band, Samples.mean(band, this::filled)), filled(band.centre(), mass));
        }
        Passed springs = springs(band);
        return new Told(tied(band, springs.middle()),
                Math.hypot(Leaf.limp(mass).uncertainty(band), springUncertainty(band, springs)));
    }

    private double tied(ThirdOctave band, double spring) {
        return Math.min(1, stuck(band) * (spring + bridges.passed(skin, barrier)));
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

    private FoamSpring spring(double stiffer) {
        return new FoamSpring(decoupler.stiffer(stiffer), skin.surfaceMass(), barrier.surfaceMass(), skin.air());
    }

    private Passed springs(ThirdOctave band) {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (double stiffer : STIFFNESS) {
            double passed = spring(stiffer).passed(band);
            least = Math.min(least, passed);
            most = Math.max(most, passed);
        }
        return new Passed(least, most);
    }

    /** 1/|1 − g·x²/(1+iη)|². */
    private double filled(double frequency) {
        double loss = decoupler.lossFactor();
        double standing = frequency / decoupler.limit();
        double x = frequency / resonance();
        double moved = x * x / Math.sqrt(Math.sqrt(1 + standing * standing * standing * standing));
        return (1 + loss * loss) / ((1 - moved) * (1 - moved) + loss * loss);
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
     * How far the spring of foam may change that, dB: the way from the middle to foam half or twice as stiff, and what the
     * transfer-matrix solution shows besides below, around and above the resonance.
     */
    double springUncertainty(ThirdOctave band) {
        return springUncertainty(band, springs(band));
    }

    private double springUncertainty(ThirdOctave band, Passed springs) {
        double reach = springs.reach();
        double ratio = band.centre() / resonance();
        if (ratio < AROUND) {
            return reach + 0.2;
        }
        return ratio < ABOVE ? 0.85 * reach + 1.5 : 0.9 * reach + 1.3;
    }

    @Override
    public boolean measured() {
        return decoupler.fill() && decoupler.depth() >= Decoupler.MEASURED_DEPTH;
    }
}
