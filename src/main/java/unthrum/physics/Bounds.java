package unthrum.physics;

/** Refuses input that no measurement could give; each message names the quantity, its value and what is expected. */
final class Bounds {
    private Bounds() {
    }

    static double positive(String quantity, double value) {
        if (value > 0 && Double.isFinite(value)) {
            return value;
        }
        throw refused(quantity, value, "a number above zero");
    }

    static double notNegative(String quantity, double value) {
        if (value >= 0 && Double.isFinite(value)) {
            return value;
        }
        throw refused(quantity, value, "zero or more");
    }

    /** A share of one: an area share, a relative humidity, an absorptance. */
    static double share(String quantity, double value) {
        if (value >= 0 && value <= 1) {
            return value;
        }
        throw refused(quantity, value, "between 0 and 1");
    }

    static double emissivity(double value) {
        if (value > 0 && value <= 1) {
            return value;
        }
        throw refused("emissivity", value, "above 0 and not above 1");
    }

    static double celsius(String quantity, double value) {
        if (value > -Radiation.ZERO_CELSIUS && Double.isFinite(value)) {
            return value;
        }
        throw refused(quantity, value, "a temperature in degrees Celsius above absolute zero");
    }

    private static IllegalArgumentException refused(String quantity, double value, String expected) {
        return new IllegalArgumentException(quantity + " is " + value + ", expected " + expected);
    }
}
