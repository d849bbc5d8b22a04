package unthrum.physics;

import java.util.List;

/**
 * A damping material at any temperature and frequency, from data over temperature at one frequency: warmer does what
 * slower does (time–temperature superposition, as on a reduced-frequency nomogram, ISO 10112).
 *
 * <p>lg a_T = −C₁(T − T₀)/(C₂ + T − T₀) (Williams, Landel and Ferry 1955). The material at T and f is what it is at T'
 * and the data's own frequency f₀, where f a_T(T) = f₀ a_T(T'). Between points the logarithm of the modulus and the
 * loss factor run straight over T'; beyond them the nearest point stands. The small shift of the modulus with density
 * and absolute temperature is left out.
 *
 * @param shift the material's own
 * @param frequency f₀ of the data, Hz
 * @param points by rising temperature, at least one
 */
public record Nomogram(Shift shift, double frequency, List<Point> points) {

    public Nomogram {
        points = List.copyOf(points);
        for (int i = 1; i < points.size(); i++) {
            if (!(points.get(i).celsius() > points.get(i - 1).celsius())) {
                throw new IllegalArgumentException("a material's points run upwards in temperature");
            }
        }
    }

    /** The material at one temperature (°C) and the data's frequency. */
    public record Point(double celsius, Viscoelastic material) {}

    /**
     * How temperature stands in for frequency.
     *
     * @param c1 C₁, decades
     * @param c2 C₂, K
     * @param celsius T₀
     */
    public record Shift(double c1, double c2, double celsius) {

        /** lg a_T; without bound towards T₀ − C₂, below which the material is a glass and the formula says nothing. */
        double decades(double temperature) {
            double above = Math.max(temperature - celsius, -0.999 * c2);
            return -c1 * above / (c2 + above);
        }

        /** The temperature at which lg a_T has this value; as hot as may be where none has. */
        double temperature(double decades) {
            return decades <= -0.999 * c1 ? Double.MAX_VALUE : celsius - decades * c2 / (c1 + decades);
        }

    }

    /** The material at a temperature (°C) and a frequency (Hz). */
    public Viscoelastic at(double celsius, double hertz) {
        double likewise = shift.temperature(shift.decades(celsius) + Math.log10(hertz / frequency));
        Point before = points.get(0);
        for (Point after : points) {
            if (after.celsius() >= likewise) {
                return between(before, after, likewise);
            }
            before = after;
        }
        return before.material();
    }

    private static Viscoelastic between(Point a, Point b, double celsius) {
        double span = b.celsius() - a.celsius();
        double t = span == 0 ? 0 : (celsius - a.celsius()) / span;
        return new Viscoelastic(
                a.material().shearModulus() * Math.pow(b.material().shearModulus() / a.material().shearModulus(), t),
                a.material().lossFactor() * (1 - t) + b.material().lossFactor() * t);
    }
}
