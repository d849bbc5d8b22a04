package unthrum.physics;

import java.util.OptionalDouble;

/**
 * Water vapour in air, by the Magnus formula over water with the constants of Alduchov and Eskridge,
 * J. Appl. Meteor. 35 (1996) 601: p = 610.94·exp[17.625t/(t+243.04)] Pa.
 *
 * <p>Holds from −40 °C to 50 °C, there within 0.4 % of the ASHRAE table above 0 °C; below 0 °C it is the pressure over
 * supercooled water, and frost forms a little sooner. Outside that range the results are empty.
 */
public final class Moisture {
    /** Lowest and highest air temperature for which the constants were fitted, °C. */
    public static final double COLDEST = -40;
    public static final double HOTTEST = 50;

    private static final double PRESSURE_AT_ZERO = 610.94;
    private static final double A = 17.625;
    private static final double B = 243.04;

    private Moisture() {
    }

    /**
     * Dew point t_d = Bγ/(A−γ), γ = ln(p/610.94 Pa), °C. Empty also for air so dry that its dew point would lie below
     * −40 °C.
     *
     * @param humidity relative humidity φ, 0 to 1
     */
    public static OptionalDouble dewPoint(double celsius, double humidity) {
        Bounds.share("relative humidity", humidity);
        if (!inRange(celsius) || humidity == 0) {
            return OptionalDouble.empty();
        }
        if (humidity == 1) {
            return OptionalDouble.of(celsius);
        }
        double gamma = Math.log(humidity * saturationPressure(celsius) / PRESSURE_AT_ZERO);
        double dewPoint = B * gamma / (A - gamma);
        return inRange(dewPoint) ? OptionalDouble.of(dewPoint) : OptionalDouble.empty();
    }

    /**
     * Temperature factor of an inner face, f = (t_face − t_out)/(t_in − t_out), 1 for a perfect insulator
     * (ISO 13788). Empty where inside and outside are equally warm.
     */
    public static OptionalDouble temperatureFactor(double innerFace, double outside, double inside) {
        return inside == outside
                ? OptionalDouble.empty()
                : OptionalDouble.of((innerFace - outside) / (inside - outside));
    }

    /** Saturation pressure over water, Pa. */
    static double saturationPressure(double celsius) {
        return PRESSURE_AT_ZERO * Math.exp(A * celsius / (B + celsius));
    }

    private static boolean inRange(double celsius) {
        return celsius >= COLDEST && celsius <= HOTTEST;
    }
}
