package unthrum.reading;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import unthrum.reading.Dimension.Unit;

/**
 * Reads a quantity: a number, a unit of the wanted dimension, within the range.
 *
 * @param dimension what is wanted, or null for a quantity of any kind
 * @param from      the least value as a file would write it, or empty
 * @param to        the greatest value as a file would write it, or empty
 */
record Measure(Dimension dimension, String from, String to) {
    /** Other ways in which people write units, for the remedy only. */
    private static final Map<String, String> ALIASES = Map.ofEntries(Map.entry("C", "degC"), Map.entry("° C", "degC"),
            Map.entry("ºC", "degC"), Map.entry("℃", "degC"), Map.entry("°", "degC"), Map.entry("deg C", "degC"),
            Map.entry("Celsius", "degC"), Map.entry("celsius", "degC"), Map.entry("°F", "degF"), Map.entry("F", "degF"),
            Map.entry("° F", "degF"), Map.entry("\"", "in"), Map.entry("inch", "in"), Map.entry("inches", "in"),
            Map.entry("'", "ft"), Map.entry("feet", "ft"), Map.entry("W/(m·K)", "W/mK"), Map.entry("percent", "%"),
            Map.entry("lbs", "lb"), Map.entry("hours", "h"), Map.entry("days", "d"));
    private static final double ROUNDING = 1e-9;
    /** A sixty-fourth of an inch needs six, and nobody measures finer. */
    private static final int FRACTION_DECIMALS = 6;

    static Measure of(Measured mark) {
        return mark == null ? new Measure(null, "", "") : new Measure(mark.value(), mark.from(), mark.to());
    }

    /** 'a length in mm, cm, m, in or ft, from 0 mm to 500 mm'. */
    String expected() {
        if (dimension == null) {
            return "a number with its unit";
        }
        String units = dimension == Dimension.NUMBER ? "" : " in " + dimension.unitList();
        String low = from.isEmpty() ? "" : " from " + from;
        String high = to.isEmpty() ? "" : " to " + to;
        return dimension.phrase() + units + (low.isEmpty() && high.isEmpty() ? "" : "," + low + high);
    }

    Outcome read(String text) {
        String shown = "'" + (text.length() > Node.SHOWN ? text.substring(0, Node.SHOWN) + "…" : text) + "'";
        int end = NumberText.length(text);
        String symbol = text.substring(end).strip();
        if (end == 0 || goesOn(symbol)) {
            return Outcome.wrong(shown + notOneNumber(text), expected(), repaired(text));
        }
        Unit unit = known(symbol);
        if (unit == null) {
            return Outcome.wrong(shown + wrongUnit(symbol), expected(), nearestUnit(text.substring(0, end), symbol));
        }
        double si = unit.toSi(Double.parseDouble(text.substring(0, end)));
        String off = outside(si, text);
        return off.isEmpty() ? Outcome.of(new Quantity(si, dimensionOf(symbol)))
                : Outcome.wrong(shown + off, expected(), "");
    }

    /** Whether another number or sign follows where the unit should stand. */
    private static boolean goesOn(String symbol) {
        for (int i = 1; i < symbol.length(); i++) {
            if (Character.isDigit(symbol.charAt(i)) && symbol.charAt(i - 1) == ' ') {
                return true;
            }
        }
        return !symbol.isEmpty() && "0123456789,.±/-+".indexOf(symbol.charAt(0)) >= 0;
    }

    private Unit known(String symbol) {
        Dimension d = dimensionOf(symbol);
        return d == null || dimension != null && d != dimension ? null : d.unitOf(symbol).orElseThrow();
    }

    private static Dimension dimensionOf(String symbol) {
        return Arrays.stream(Dimension.values()).filter(d -> d.unitOf(symbol).isPresent()).findFirst().orElse(null);
    }

    private static String notOneNumber(String text) {
        if (text.indexOf('±') >= 0) {
            return " is a value with a tolerance";
        }
        if (text.indexOf(',') >= 0) {
            return " has a comma";
        }
        boolean fraction = text.indexOf('/') > 0 && text.chars().anyMatch(Character::isDigit);
        return fraction ? " is a fraction" : " is not one number";
    }

    private String repaired(String text) {
        if (text.indexOf('±') > 0) {
            return "write the middle value alone";
        }
        if (text.indexOf(',') >= 0) {
            return withoutComma(text);
        }
        String better = text.startsWith(".") ? "0" + text : decimal(text);
        return !better.equals(text) && read(better).value() != null ? Nearest.didYouMean(better) : "";
    }

    private String withoutComma(String text) {
        List<String> meant = Commas.meant(text);
        if (dimension != null && dimension != Dimension.NUMBER && meant.stream().anyMatch(NumberText::isNumber)) {
            return Nearest.write(meant) + ", with the unit";
        }
        String remedy = Commas.remedy(text, t -> read(t).value() != null);
        return remedy.isEmpty() && !meant.isEmpty() ? "decimals have a point" : remedy;
    }

    /** '1 1/4 in' as '1.25 in'; a text without a fraction as it is. */
    private static String decimal(String text) {
        Matcher fraction = Pattern.compile("(?:(\\d{1,4}) +)?(\\d{1,4})/(\\d{1,4})( *\\S+)").matcher(text);
        if (!fraction.matches() || Integer.parseInt(fraction.group(3)) == 0) {
            return text;
        }
        int whole = fraction.group(1) == null ? 0 : Integer.parseInt(fraction.group(1));
        double part = Double.parseDouble(fraction.group(2)) / Integer.parseInt(fraction.group(3));
        return BigDecimal.valueOf(whole + part).setScale(FRACTION_DECIMALS, RoundingMode.HALF_UP).stripTrailingZeros()
                .toPlainString() + fraction.group(4);
    }

    private static String wrongUnit(String symbol) {
        if (symbol.isEmpty()) {
            return " without a unit";
        }
        Dimension other = dimensionOf(symbol);
        return other == null ? " with the unknown unit '" + symbol + "'" : " is " + other.phrase();
    }

    private String nearestUnit(String number, String symbol) {
        if (dimension == null || dimension == Dimension.NUMBER) {
            return "";
        }
        if (symbol.isEmpty()) {
            return Nearest.didYouMean(number + " " + dimension.shownIn().symbol());
        }
        if (dimensionOf(symbol) != null) {
            return "";
        }
        List<String> units = new ArrayList<>(dimension.units().stream().map(Unit::symbol).toList());
        String alias = ALIASES.getOrDefault(symbol, symbol);
        return Nearest.to(alias, units).map(u -> Nearest.didYouMean(number + " " + u)).orElse("");
    }

    private String outside(double si, String text) {
        if (!Double.isFinite(si)) {
            return " is beyond any measure";
        }
        if (text.startsWith("-") && si < 0 && !mayBeNegative()) {
            return " is negative";
        }
        if (!from.isEmpty() && si < bound(from) - slack(bound(from))) {
            return " is too small";
        }
        return !to.isEmpty() && si > bound(to) + slack(bound(to)) ? " is too large" : "";
    }

    boolean mayBeNegative() {
        boolean signed = dimension == null || dimension == Dimension.TEMPERATURE
                || dimension == Dimension.LEVEL || dimension == Dimension.NUMBER;
        return signed && (from.isEmpty() || bound(from) < 0);
    }

    private double bound(String written) {
        int end = NumberText.length(written);
        Unit unit = dimension.unitOf(written.substring(end).strip()).orElseThrow();
        return unit.toSi(Double.parseDouble(written.substring(0, end)));
    }

    private static double slack(double bound) {
        return Math.abs(bound) * ROUNDING;
    }
}
