package unthrum.physics;

/**
 * Foam or felt between two masses, in sound: the skeleton as an elastic layer with its own mass, stuck to both; beside it
 * the air in open pores as a spring without mass; and the air that both masses push.
 *
 * <p>A face that moves together with the other needs the stress −Kk tan(kd/2), one that moves apart from it
 * Kk cot(kd/2) + 2A/d, with K = E(1+iη), k = ω√(ρ/K) and A the modulus of the air (common in texts on waves in layers).
 * The air outside weighs on a mass by ρ₀c/cosθ; 60° stands in for a field of all angles. Valid up to where waves stand
 * across the air itself, c/4d. Held against a transfer-matrix solution over angles (in the tests): root mean square
 * 0.7 dB with the foam known.
 */
final class FoamSpring {

    /** Of 60°, by fit to the transfer-matrix solution in the tests. */
    private static final double COSINE = 0.5;

    private final double skin;
    private final double barrier;
    private final double mass;
    private final double pores;
    private final double load;
    /** k·d/2 and Kk/2 for each rad/s. */
    private final Complex phase;
    private final Complex wave;

    /**
     * @param skin    kg/m², with half of the foam
     * @param barrier the same, of the other mass
     */
    FoamSpring(Decoupler foam, double skin, double barrier, Air around) {
        this.skin = skin;
        this.barrier = barrier;
        this.mass = foam.mass();
        this.pores = foam.air() / foam.depth();
        this.load = around.impedance() / COSINE;
        Complex modulus = new Complex(foam.modulus(), foam.modulus() * foam.lossFactor());
        Complex slowness = new Complex(foam.density(), 0).over(modulus).root();
        this.phase = slowness.times(foam.depth() / 2);
        this.wave = modulus.times(slowness).times(0.5);
    }

    /** How much more passes than if both masses were stuck together, mean over a band. */
    double passed(ThirdOctave band) {
        return Samples.mean(band, this::passed);
    }

    /** |stuck together / on the foam|², movement of the second mass for the same push on the first. */
    double passed(double frequency) {
        double omega = 2 * Math.PI * frequency;
        Complex tangent = phase.times(omega).tangent();
        Complex together = wave.times(-omega).times(tangent);
        Complex apart = wave.times(omega).over(tangent).plus(pores);
        Complex own = apart.plus(together);
        Complex across = apart.plus(together.times(-1));
        Complex one = own.plus(moved(skin - mass / 2, omega));
        Complex two = own.plus(moved(barrier - mass / 2, omega));
        Complex stuck = moved(skin + barrier, omega).plus(new Complex(0, omega * load));
        Complex floated = one.times(two).plus(across.times(across).times(-1));
        return across.times(stuck).over(floated).square();
    }

    /** Force for each metre that a mass moves with the air on its outer side. */
    private Complex moved(double mass, double omega) {
        return new Complex(-mass * omega * omega, omega * load);
    }
}
