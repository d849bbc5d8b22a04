package unthrum.physics;

/**
 * Mode shape of a beam of unit length with both ends hinged or both clamped.
 *
 * <p>About the middle, ξ from −½ to ½: φ = cos βξ − cos(β/2) cosh βξ / cosh(β/2) for odd m, and the same with sines
 * for even m, scaled to ∫φ² = 1 and positive beside ξ = −½. Beam theory; the classical shapes.
 */
final class BeamShape {

    private final int m;
    private final double beta;
    private final double norm;

    private BeamShape(int m, double beta) {
        this.m = m;
        this.beta = beta;
        double sign = Math.signum(raw(0.4 / m - 0.5, 0));
        this.norm = sign / Math.sqrt(square());
    }

    /** ∫φ² before it is made one. */
    private double square() {
        double half = beta / 2;
        double sign = m % 2 == 1 ? 1 : -1;
        double end = end();
        double trigonometric = 0.5 + sign * Math.sin(beta) / (2 * beta);
        double hyperbolic = (Math.sinh(beta) / beta + sign) / 2;
        double mixed = (Math.sin(half) * Math.cosh(half) + sign * Math.cos(half) * Math.sinh(half)) / beta;
        return trigonometric - 2 * end * mixed + end * end * hyperbolic;
    }

    private double end() {
        double half = beta / 2;
        return m % 2 == 1 ? Math.cos(half) / Math.cosh(half) : Math.sin(half) / Math.sinh(half);
    }

    static BeamShape hinged(int m) {
        return new BeamShape(m, BeamMode.hinged(m).beta());
    }

    static BeamShape clamped(int m) {
        return new BeamShape(m, BeamMode.clamped(m).beta());
    }

    /** The derivative of the given order (0 to 2) at ξ, −½ to ½. */
    double at(double x, int derivative) {
        return norm * raw(x, derivative);
    }

    private double raw(double x, int derivative) {
        double scale = Math.pow(beta, derivative);
        double phase = derivative * Math.PI / 2;
        boolean even = m % 2 == 1;
        double trigonometric = even ? Math.cos(beta * x + phase) : Math.sin(beta * x + phase);
        boolean cosh = even == (derivative % 2 == 0);
        double hyperbolic = cosh ? Math.cosh(beta * x) : Math.sinh(beta * x);
        return scale * (trigonometric - end() * hyperbolic);
    }
}
