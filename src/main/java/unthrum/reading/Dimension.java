package unthrum.reading;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A kind of quantity: the units it may be written in, the SI value inside, and how a fitter wants to read it.
 *
 * <p>Temperatures are held in degrees Celsius, the trade's and the SI's own derived unit; every other value is in
 * plain SI. The first unit of a dimension is the one it is shown in. Conversion factors of inch, pound and
 * gallon-free units are exact by definition (NIST SP 811, appendix B).
 */
public enum Dimension {
    LENGTH("a length", 1, unit("mm", 1e-3), unit("cm", 1e-2), unit("m", 1), unit("in", 0.0254), unit("ft", 0.3048)),
    AREA("an area", 2, unit("m2", 1), unit("cm2", 1e-4), unit("ft2", 0.09290304)),
    MASS("a mass", 1, unit("kg", 1), unit("g", 1e-3), unit("lb", 0.45359237)),
    SURFACE_DENSITY("a mass per area", 1, unit("kg/m2", 1), unit("lb/ft2", 0.45359237 / 0.09290304)),
    DENSITY("a density", 0, unit("kg/m3", 1), unit("g/cm3", 1000)),
    TEMPERATURE("a temperature", 0, unit("degC", 1), new Unit("degF", 5.0 / 9.0, -32.0 * 5.0 / 9.0)),
    FREQUENCY("a frequency", 0, unit("Hz", 1), unit("kHz", 1000)),
    ROTATION("a speed of rotation", 0, unit("rpm", 1.0 / 60)),
    SHARE("a share", 0, unit("%", 0.01)),
    LEVEL("a level difference", 1, unit("dB", 1)),
    STIFFNESS("a modulus", 2, unit("MPa", 1e6), unit("kPa", 1e3), unit("GPa", 1e9)),
    CONDUCTIVITY("a thermal conductivity", 3, unit("W/mK", 1)),
    RESISTANCE("a thermal resistance", 2, unit("m2K/W", 1)),
    HEAT_FLOW("a heat flow", 0, unit("W/m2", 1)),
    BURN_RATE("a burning rate", 0, unit("mm/min", 1e-3 / 60), unit("in/min", 0.0254 / 60)),
    TIME("a time", 0, unit("min", 60), unit("h", 3600), unit("s", 1), unit("d", 86400)),
    NUMBER("a plain number", 2, unit("", 1));

    /** A unit: SI value = written value × factor + offset. */
    public record Unit(String symbol, double factor, double offset) {
        public double toSi(double written) {
            return written * factor + offset;
        }

        public double fromSi(double si) {
            return (si - offset) / factor;
        }

        /** The unit as it is printed: '°C', 'm²'. A file may write it so too. */
        public String printed() {
            return symbol.replace("degC", "°C").replace("m2", "m²").replace("m3", "m³");
        }
    }

    /** More than anybody writes, fewer than arithmetic spoils. */
    private static final MathContext DIGITS = new MathContext(9);

    private final String phrase;
    private final int decimals;
    private final List<Unit> units;

    Dimension(String phrase, int decimals, Unit... units) {
        this.phrase = phrase;
        this.decimals = decimals;
        this.units = List.of(units);
    }

    private static Unit unit(String symbol, double factor) {
        return new Unit(symbol, factor, 0);
    }

    /** What to call it in an error: 'a length'. */
    public String phrase() {
        return phrase;
    }

    public List<Unit> units() {
        return units;
    }

    public Unit shownIn() {
        return units.get(0);
    }

    /** The unit of that symbol, or of that printed form. */
    public Optional<Unit> unitOf(String symbol) {
        return units.stream().filter(u -> u.symbol().equals(symbol) || u.printed().equals(symbol)).findFirst();
    }

    /** The units as a list for a message: 'mm, cm, m, in or ft'. */
    public String unitList() {
        String all = units.stream().map(Unit::symbol).collect(Collectors.joining(", "));
        int last = all.lastIndexOf(", ");
        return last < 0 ? all : all.substring(0, last) + " or " + all.substring(last + 2);
    }

    /** The value as a fitter reads it, rounded sensibly, with its unit: '8.6 mm', '85 °C', '40 %'. */
    public String show(double si) {
        double shown = shownIn().fromSi(si);
        String number = String.format(Locale.ROOT, "%." + decimals + "f", shown);
        if (number.indexOf('.') >= 0) {
            number = number.replaceAll("0+$", "").replaceAll("\\.$", "");
        }
        if (number.equals("-0")) {
            number = "0";
        }
        return withUnit(number);
    }

    /** The value with all its digits, for a number of the trade that may be small: '0.05 %', '0.007'. */
    public String inFull(double si) {
        return withUnit(new BigDecimal(shownIn().fromSi(si)).round(DIGITS).stripTrailingZeros().toPlainString());
    }

    private String withUnit(String number) {
        return this == NUMBER ? number : number + " " + shownIn().printed();
    }

    static String names() {
        return Arrays.stream(values()).map(Enum::name).collect(Collectors.joining(", "));
    }
}
