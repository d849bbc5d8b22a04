package unthrum.physics;

/**
 * A damping material at one temperature and frequency.
 *
 * @param shearModulus real part, Pa
 * @param lossFactor imaginary over real part
 */
public record Viscoelastic(double shearModulus, double lossFactor) {

    /** Poisson's ratio of rubbery materials, nearly incompressible. From memory. */
    private static final double POISSON_RATIO = 0.49;

    /** Young's modulus 2G(1 + ν), Pa, for a layer that works by stretching. */
    public double youngsModulus() {
        return 2 * shearModulus * (1 + POISSON_RATIO);
    }
}
