package unthrum.physics;

/**
 * Two leaves with a spring between them: a skin, a decoupler and a heavy barrier.
 *
 * <p>Field-incidence transmission loss
 * TL = 10 lg[1 + (ωM/2ρ₀c)²·|1 − g·x²/(1+iη)|²] − 5(1+w) − w·(coincidence cost of the leaves) dB, where M = m₁+m₂,
 * x = f/f₀, η the loss factor of the spring, w = x⁴/(1+x⁴) and g = (1+(kd)⁴)^(−1/4). Its limits are those of Sharp
 * as given by Bies, Hansen and Howard: the mass law of both leaves together below f₀; TL₁ + TL₂ + 20 lg(2kd) above it
 * (their 20 lg(fd) − 29) for an air gap; TL₁ + TL₂ + 6 above f = c/2πd, where standing waves in the gap stop the gain.
 * The smooth joint between these limits (w and g) is this project's own.
 *
 * <p>Never better than the combined mass below f₀, and up to 1.4 f₀. It knows no bridges: each bolt or hard
 * edge that touches both leaves makes the real figure poorer, so treat it as what a floating barrier can reach.
 * Uncertainty about 5 dB, about 10 dB near f₀ (from memory).
 */
public record DoubleLeaf(Leaf skin, Leaf barrier, Decoupler decoupler) implements Partition {

    /** Mass-spring-mass resonance f₀ = (1/2π)·√(s(m₁+m₂)/(m₁m₂)), Hz. Hopkins, Sound Insulation, section 4.3.5. */
    public double resonance() {
        double m1 = skin.surfaceMass();
        double m2 = barrier.surfaceMass();
        return Math.sqrt(decoupler.stiffness() * (m1 + m2) / (m1 * m2)) / (2 * Math.PI);
    }

    /** Frequency c/2πd from which standing waves across the gap stop the gain, Hz. */
    public double cavityLimit() {
        return skin.air().soundSpeed() / (2 * Math.PI * decoupler.depth());
    }

    @Override
    public double transmissionLoss(double frequency) {
        double combined = skin.surfaceMass() + barrier.surfaceMass();
        double inertia = Math.PI * Bounds.positive("frequency", frequency) * combined / skin.air().impedance();
        double square = Math.pow(frequency / resonance(), 2);
        double quartic = square * square;
        double above = quartic / (1 + quartic);
        double normal = 10 * Math.log10(1 + inertia * inertia * springGain(square, frequency));
        double coincidence = skin.coincidenceCost(frequency) + barrier.coincidenceCost(frequency);
        return Math.max(0, normal - MassLaw.FIELD_INCIDENCE_COST * (1 + above) - above * coincidence);
    }

    /** |1 − g·x²/(1+iη)|², by which the spring changes what the combined mass lets through. */
    private double springGain(double square, double frequency) {
        double loss = decoupler.lossFactor();
        double x = square * Math.pow(1 + Math.pow(frequency / cavityLimit(), 4), -0.25);
        return ((1 - x) * (1 - x) + loss * loss) / (1 + loss * loss);
    }
}
