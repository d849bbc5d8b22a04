package unthrum.physics;

import java.util.function.DoubleUnaryOperator;

/**
 * Mode shape of a beam of unit length whose two ends are held alike by rotational springs, from hinge to clamp.
 *
 * <p>About the middle, ξ from −½ to ½: φ = cos βξ − cos(β/2) cosh βξ / cosh(β/2) for odd m, and the same with sines
 * for even m, scaled to ∫φ² = 1 and positive beside ξ = −½. The spring K = kL/EI gives the condition φ'' + Kφ' = 0 at
 * ξ = ½, so 2β + K (tan β/2 + tanh β/2) = 0 (odd m) or 2β + K (coth β/2 − cot β/2) = 0 (even m). Derived here from beam
 * theory; K = 0 and K = ∞ return the classical hinged and clamped beams.
 */
final class BeamShape {

    private static final int INTERVALS = 400;

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

    /** Ends with the dimensionless rotational stiffness K = kL/EI, from 0 (hinge) to infinity (clamp). */
    static BeamShape restrained(int m, double stiffness) {
        if (!(stiffness >= 0)) {
            throw new IllegalArgumentException("edge stiffness is not negative");
        }
        if (Double.isInfinite(stiffness)) {
            return clamped(m);
        }
        double soft = BeamMode.hinged(m).beta();
        double stiff = BeamMode.clamped(m).beta();
        double sign = Math.signum(endCondition(m, soft, 1));
        for (int i = 0; i < 60; i++) {
            double middle = (soft + stiff) / 2;
            if (sign * endCondition(m, middle, stiffness) >= 0) {
                soft = middle;
            } else {
                stiff = middle;
            }
        }
        return new BeamShape(m, (soft + stiff) / 2);
    }

    private static double endCondition(int m, double beta, double stiffness) {
        double half = beta / 2;
        double sin = Math.sin(half);
        double cos = Math.cos(half);
        return m % 2 == 1
                ? 2 * beta * cos + stiffness * (sin + cos * Math.tanh(half))
                : 2 * beta * sin + stiffness * (sin / Math.tanh(half) - cos);
    }

    /** Wave number and mean square slope of this shape, as used by one-term plate formulas. */
    BeamMode mode() {
        return new BeamMode(beta, integral(x -> Math.pow(at(x, 1), 2), -0.5, 0.5));
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

    /** Simpson's rule. */
    static double integral(DoubleUnaryOperator f, double from, double to) {
        double h = (to - from) / INTERVALS;
        double sum = f.applyAsDouble(from) + f.applyAsDouble(to);
        for (int i = 1; i < INTERVALS; i++) {
            sum += (i % 2 == 1 ? 4 : 2) * f.applyAsDouble(from + i * h);
        }
        return sum * h / 3;
    }
}
