package unthrum.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static unthrum.reading.Texts.problemsWith;
import static unthrum.reading.Texts.with;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A decimal comma is told once, with what to write")
class DecimalCommaTest {
    private static final String OPENING = "; expected a length in mm, cm, m, in or ft, from 1 mm to 1 m; ";

    @ParameterizedTest(name = "{0}")
    @DisplayName("in a line of its own")
    @CsvSource(delimiter = '|', value = {
        "width: 300,5 mm|write '300.5 mm'",
        "width: 0,7m|write '0.7m'",
        "width: '0,7 m'|write '0.7 m'",
        "width: 1,400 mm|write '1400 mm'",
        "width: 1,4 m, say|decimals have a point",
        "width: 0,7 mn|decimals have a point",
        "width: 0,7|write '0.7', with the unit",
        "coldest: -5,5 °C|write '-5.5 °C'",
        "heaviest: 1,250 kg/m2|write '1.250 kg/m2' or '1250 kg/m2'",
        "heaviest: 1.250,5 kg/m2|write '1250.5 kg/m2'",
        "heaviest: 1,250.5 kg/m2|write '1250.5 kg/m2'",
        "heaviest: 1,250,000 kg/m2|write '1250000 kg/m2'",
        "loss factor: 0,02|write '0.02'",
        "anything: 0,5 mm|write '0.5 mm'",
        "anything: 0,5|write '0.5'",
        "price: 12,50 EUR|write '12.50 EUR'",
        "price: 1.000,50 EUR|write '1000.50 EUR'",
        "slope: 0,25|write '0.25'",
    })
    void alone(String line, String remedy) {
        assertThat(problemsWith(line).lines()).singleElement().asString().startsWith("shelf.yaml:2:").endsWith("; " + remedy);
    }

    @Test
    @DisplayName("and a word beside the number is no reason to guess")
    void noNumber() {
        assertThat(problemsWith("width: broad, tall")).endsWith("'broad, tall' has a comma; expected a length in mm, cm, m,"
                + " in or ft, from 100 mm to 2 m");
        assertThat(problemsWith("boards: 2,5")).isEqualTo("shelf.yaml:2:9: '2,5'; expected a whole number from 1 to 9");
    }

    @Test
    @DisplayName("in brackets, where YAML makes two entries of it")
    void inBrackets() {
        String first = "shelf.yaml:2:11: '0,3 m' has a comma" + OPENING + "write '0.3 m'";
        assertThat(problemsWith("opening: [0,3 m, 0,25 m]")).isEqualTo(
                first + "\nshelf.yaml:2:18: '0,25 m' has a comma" + OPENING + "write '0.25 m'");
        assertThat(problemsWith("opening: [0,3 m, 250 mm]")).isEqualTo(first);
        assertThat(problemsWith("opening: [0,3, 0,25]").lines()).hasSize(2).allMatch(l -> l.endsWith("', with the unit"));
    }

    @Test
    @DisplayName("but two sides without a space are two sides")
    void twoSides() {
        assertThat(with("opening: [300 mm,250 mm]").opening().orElseThrow()).hasSize(2);
        assertThat(problemsWith("opening: [300,250 mm]")).isEqualTo(
                "shelf.yaml:2:11: '300' without a unit" + OPENING + "did you mean '300 mm'?");
    }

    @Test
    @DisplayName("in braces, where YAML makes a key of what follows it")
    void inBraces() {
        assertThat(problemsWith("weights: {top: 2,5 kg, low: 3 kg}")).isEqualTo("shelf.yaml:2:16: '2,5 kg' has a comma;"
                + " expected a mass in kg, g or lb; write '2.5 kg'");
        assertThat(problemsWith("goods: [{kind: foam, pieces: 2,5}]")).isEqualTo(
                "shelf.yaml:2:30: '2,5'; expected a whole number");
        assertThat(problemsWith("goods: {kind: foam, mm: 0,7}")).isEqualTo(
                "shelf.yaml:2:21: unknown key 'mm'; expected one of the keys kind or pieces");
        assertThat(problemsWith("weights: {top: 2,5 kg: 3 kg}")).contains("'2' without a unit");
    }

    @Test
    @DisplayName("but a text in braces that goes on after a comma wants quotes")
    void textInBraces() {
        assertThat(problemsWith("place: {wall: red, room: 3,5 stairs up}")).startsWith(
                "shelf.yaml:2:28: unknown key '5 stairs up'");
        assertThat(problemsWith("notes: {a: 3,5 stairs up}")).startsWith("shelf.yaml:2:25: nothing after '5 stairs up:'");
    }
}
