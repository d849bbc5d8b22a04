package unthrum.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static unthrum.reading.Texts.problemsWith;
import static unthrum.reading.Texts.with;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Quantities carry their unit")
class QuantityReadingTest {
    private static final String A_WIDTH = "; expected a length in mm, cm, m, in or ft, from 100 mm to 2 m";

    @Nested
    @DisplayName("What may be written")
    class Accepted {
        @ParameterizedTest(name = "{0} is {1} m")
        @DisplayName("lengths; inch and foot are exact (NIST SP 811, appendix B)")
        @CsvSource({"300 mm,0.3", "300mm,0.3", "30.0 cm,0.3", "0.3 m,0.3", "12 in,0.3048", "1 ft,0.3048",
            "100 mm,0.1", "2 m,2", "0.1 m,0.1"})
        void lengths(String written, double metres) {
            assertThat(with("width: " + written).width().orElseThrow().si()).isCloseTo(metres, within(1e-12));
        }

        @Test
        @DisplayName("temperatures below zero, and 14 degF is -10 degC (NIST SP 811, section B.6: (F - 32) / 1.8)")
        void temperatures() {
            assertThat(with("coldest: -15 degC").coldest().orElseThrow().si()).isEqualTo(-15);
            assertThat(with("coldest: 14 degF").coldest().orElseThrow().si()).isCloseTo(-10, within(1e-9));
        }

        @Test
        @DisplayName("a degree sign, and every other unit as it is printed")
        void asPrinted() {
            assertThat(with("coldest: 5 °C").coldest()).contains(new Quantity(5, Dimension.TEMPERATURE));
            assertThat(with("coldest: -15°C").coldest()).contains(new Quantity(-15, Dimension.TEMPERATURE));
            assertThat(with("heaviest: 4.5 kg/m²").heaviest()).contains(new Quantity(4.5, Dimension.SURFACE_DENSITY));
            for (Dimension d : Dimension.values()) {
                assertThat(Quantity.of(d.show(3)).dimension()).as(d.show(3)).isEqualTo(d);
                assertThat(Quantity.of(d.inFull(3)).si()).as(d.inFull(3)).isCloseTo(3, within(1e-7));
            }
        }

        @Test
        @DisplayName("a plain number where a number has no unit, and any unit where any quantity may stand")
        void others() {
            assertThat(with("loss factor: 0.25").lossFactor()).contains(new Quantity(0.25, Dimension.NUMBER));
            assertThat(with("louder: -3 dB").louder()).contains(new Quantity(-3, Dimension.LEVEL));
            assertThat(with("heaviest: 4.5 kg/m2").heaviest().orElseThrow().si()).isEqualTo(4.5);
            assertThat(with("anything: 4 kg/m2").anything()).contains(new Quantity(4, Dimension.SURFACE_DENSITY));
            assertThat(with("anything: 0.5").anything()).contains(new Quantity(0.5, Dimension.NUMBER));
        }
    }

    @Nested
    @DisplayName("What is refused, and how it is said")
    class Refused {
        private void width(String written, String found, String remedy) {
            String end = remedy.isEmpty() ? "" : "; " + remedy;
            assertThat(problemsWith("width: " + written)).isEqualTo(
                    "shelf.yaml:2:8: '" + written + "'" + found + A_WIDTH + end);
        }

        @Test
        @DisplayName("a bare number, with the unit it wants")
        void bare() {
            width("300", " without a unit", "did you mean '300 mm'?");
        }

        @Test
        @DisplayName("a unit of another kind, a misspelt one, one that nobody knows")
        void units() {
            width("300 kg", " is a mass", "");
            width("300 mn", " with the unknown unit 'mn'", "did you mean '300 mm'?");
            width("300 MM", " with the unknown unit 'MM'", "did you mean '300 mm'?");
            width("12 inch", " with the unknown unit 'inch'", "did you mean '12 in'?");
            width("3 cubits", " with the unknown unit 'cubits'", "");
            for (String celsius : List.of("C", "° C", "ºC", "℃", "°", "degc", "celsius")) {
                assertThat(problemsWith("coldest: 5 " + celsius)).isEqualTo("shelf.yaml:2:10: '5 " + celsius
                        + "' with the unknown unit '" + celsius + "'; expected a temperature in degC or degF,"
                        + " from -30 degC to 60 degC; did you mean '5 degC'?");
            }
            assertThat(problemsWith("coldest: 41 °F")).endsWith("did you mean '41 degF'?");
            assertThat(problemsWith("coldest: 41 F")).endsWith("did you mean '41 degF'?");
            assertThat(problemsWith("width: 30 °C")).contains("'30 °C' is a temperature");
            assertThat(problemsWith("heaviest: 4 kg/m3")).isEqualTo("shelf.yaml:2:11: '4 kg/m3' is a density;"
                    + " expected a mass per area in kg/m2 or lb/ft2");
        }

        @Test
        @DisplayName("a tolerance, a fraction, a span, two sizes")
        void notOneNumber() {
            width("300 ± 2 mm", " is a value with a tolerance", "write the middle value alone");
            width("300 mm ± 2 mm", " is a value with a tolerance", "write the middle value alone");
            width("31/4 in", " is a fraction", "did you mean '7.75 in'?");
            width("7 3/64 in", " is a fraction", "did you mean '7.046875 in'?");
            width("7 3/0 in", " is a fraction", "");
            width(".5 m", " is not one number", "did you mean '0.5 m'?");
            width("300-310 mm", " is not one number", "");
            width("300 x 310 mm", " is not one number", "");
            width("about 300 mm", " is not one number", "");
        }

        @Test
        @DisplayName("too small, too large, negative, endless, no number at all")
        void range() {
            width("99.9 mm", " is too small", "");
            width("2.001 m", " is too large", "");
            width("0 mm", " is too small", "");
            width("-300 mm", " is negative", "");
            width("NaN", " is not one number", "");
            width(".inf", " is not one number", "");
            width("wide", " is not one number", "");
            assertThat(problemsWith("width: " + "9".repeat(400) + " mm")).contains("is beyond any measure");
            assertThat(problemsWith("heaviest: -4 kg/m2")).contains("'-4 kg/m2' is negative");
            assertThat(problemsWith("warmest: -4 degC")).contains("'-4 degC' is negative");
            assertThat(problemsWith("coldest: -31 degC")).contains("'-31 degC' is too small");
        }

        @Test
        @DisplayName("a quantity of any kind still needs a known unit")
        void anyKind() {
            assertThat(problemsWith("anything: 3 cubits")).isEqualTo("shelf.yaml:2:11: '3 cubits' with the unknown"
                    + " unit 'cubits'; expected a number with its unit");
        }
    }

    @Nested
    @DisplayName("Money carries its ISO 4217 code")
    class OfMoney {
        private static final String MONEY = "; expected an amount and its ISO 4217 code, such as 550 EUR";

        @ParameterizedTest(name = "{0}")
        @CsvSource(delimiter = '|', value = {
            "550| without a currency|; add the code",
            "550 €| with the unknown currency '€'|; did you mean '550 EUR'?",
            "550 eur| with the unknown currency 'eur'|; did you mean '550 EUR'?",
            "550 XQZ| with the unknown currency 'XQZ'|",
            "-5 EUR| is negative|",
            "EUR 550||; put the amount first, with a decimal point if it needs one"})
        void refused(String written, String found, String remedy) {
            assertThat(problemsWith("price: " + written)).isEqualTo("shelf.yaml:2:8: '" + written + "'"
                    + (found == null ? "" : " " + found.strip()) + MONEY + (remedy == null ? "" : remedy));
        }
    }
}
