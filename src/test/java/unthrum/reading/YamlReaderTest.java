package unthrum.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static unthrum.reading.Texts.problems;
import static unthrum.reading.Texts.problemsWith;
import static unthrum.reading.Texts.shelf;
import static unthrum.reading.Texts.with;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import unthrum.reading.Shelf.Colour;
import unthrum.reading.Shelf.Good;
import unthrum.reading.Shelf.Kind;
import unthrum.reading.Shelf.Place;

@DisplayName("A YAML file becomes a record")
class YamlReaderTest {

    @Nested
    @DisplayName("What may be written")
    class Accepted {
        @Test
        @DisplayName("only what is required")
        void leastFile() {
            Shelf shelf = shelf("shelf: left");
            assertThat(shelf.shelf()).isEqualTo("left");
            assertThat(shelf.width()).isEmpty();
            assertThat(shelf.goods()).isEmpty();
        }

        @Test
        @DisplayName("a key that is absent and one that is 'unknown' say the same")
        void unknownIsAbsent() {
            assertThat(with("goods: unknown\nwidth: unknown\nlocked: unknown\nnotes: unknown"))
                    .isEqualTo(shelf("shelf: left"));
        }

        @Test
        @DisplayName("'none' is an empty list, which is not the same as unknown")
        void noneIsEmpty() {
            assertThat(with("goods: none").goods()).contains(List.of());
            assertThat(with("goods: []").goods()).contains(List.of());
        }

        @Test
        @DisplayName("one entry needs no brackets, and a kind alone stands for the whole entry")
        void listOfOne() {
            Good foam = new Good(Kind.FOAM, Optional.empty());
            Good sheets = new Good(Kind.BUTYL_SHEET, Optional.of(12));
            assertThat(with("goods: foam").goods()).contains(List.of(foam));
            assertThat(with("goods: {kind: butyl sheet, pieces: 12}").goods()).contains(List.of(sheets));
            assertThat(with("goods: [foam, {kind: butyl sheet, pieces: 12}]").goods())
                    .contains(List.of(foam, sheets));
            assertThat(with("goods:\n- foam\n- kind: butyl sheet\n  pieces: 12").goods())
                    .contains(List.of(foam, sheets));
        }

        @Test
        @DisplayName("words, blocks, whole numbers, numbers, days, money, yes and no")
        void otherValues() {
            assertThat(with("colours: pale green").colours()).contains(List.of(Colour.PALE_GREEN));
            assertThat(with("place: {wall: red, room: \"no: 3\"}").place()).contains(new Place(Colour.RED, "no: 3"));
            assertThat(with("boards: 4").boards()).contains(4);
            assertThat(with("slope: -0.25").slope()).contains(-0.25);
            assertThat(with("checked: 2026-01-31").checked()).contains(LocalDate.of(2026, 1, 31));
            assertThat(with("price: 12.50 EUR").price()).contains(new Money(new BigDecimal("12.50"), "EUR"));
            assertThat(List.of(with("locked: yes"), with("locked: true"))).allMatch(s -> s.locked().orElseThrow());
            assertThat(List.of(with("locked: no"), with("locked: false"))).noneMatch(s -> s.locked().orElseThrow());
        }

        @Test
        @DisplayName("names of one's own, each with a value of the same kind")
        void maps() {
            Shelf shelf = with("weights: {top row: 2 kg, x.y: 500 g}\nnotes: {a: any text}");
            assertThat(shelf.weights().orElseThrow()).containsEntry("x.y", new Quantity(0.5, Dimension.MASS))
                    .containsOnlyKeys("top row", "x.y");
            assertThat(shelf.notes().orElseThrow()).containsEntry("a", "any text");
        }

        @Test
        @DisplayName("a byte order mark, Windows line ends, comments and a leading '---'")
        void harmlessMarks() {
            assertThat(shelf("\uFEFF---\r\n# a comment\r\nshelf: left  # another\r\n")).isEqualTo(shelf("shelf: left"));
        }
    }

    @Nested
    @DisplayName("Keys that are wrong")
    class Keys {
        @Test
        @DisplayName("a misspelt key is reported once, with the key that was meant")
        void misspelt() {
            assertThat(problemsWith("widht: 30 cm")).isEqualTo(
                    "shelf.yaml:2:1: unknown key 'widht'; expected a known key; did you mean 'width'?");
            assertThat(problems("shef: left")).isEqualTo(
                    "shelf.yaml:1:1: unknown key 'shef'; expected a known key; did you mean 'shelf'?");
        }

        @Test
        @DisplayName("a key that resembles none lists the known ones")
        void unheardOf() {
            assertThat(problemsWith("place: {wall: red, room: attic, aardvarks: 2}")).isEqualTo(
                    "shelf.yaml:2:33: unknown key 'aardvarks'; expected one of the keys wall or room");
        }

        @Test
        @DisplayName("a key that stands twice")
        void twice() {
            assertThat(problemsWith("boards: 2\nboards: 3")).isEqualTo("shelf.yaml:3:1: the key 'boards' a second time"
                    + " (first in line 2); expected each key once; delete one of the two");
        }

        @Test
        @DisplayName("a key that is missing, at the block that lacks it")
        void missing() {
            assertThat(problems("boards: 2")).isEqualTo(
                    "shelf.yaml:1:1: no 'shelf' in this file; expected text; add the key");
            assertThat(problemsWith("place: {wall: red}")).isEqualTo(
                    "shelf.yaml:2:8: no 'room' in 'place'; expected text; add the key");
            assertThat(problemsWith("goods:\n- {pieces: 2}")).isEqualTo("shelf.yaml:3:3: no 'kind' in 'goods';"
                    + " expected one of foam, butyl sheet or nothing; add the key");
        }

        @Test
        @DisplayName("a key with nothing after it")
        void nothingAfter() {
            assertThat(problemsWith("boards:")).isEqualTo("shelf.yaml:2:8: nothing after 'boards:'; expected a whole"
                    + " number from 1 to 9; write the value, or 'unknown' where a key may be left out");
        }

        @Test
        @DisplayName("a list in place of a key")
        void listAsKey() {
            assertThat(problemsWith("? [a, b]\n: c")).isEqualTo("shelf.yaml:2:3: a list in place of a key;"
                    + " expected a word before the colon; put text that holds brackets in quotes");
        }
    }

    @Nested
    @DisplayName("Values that are wrong")
    class Values {
        @Test
        @DisplayName("a misspelt word gets the nearest one, an unheard-of word the whole list")
        void words() {
            assertThat(problemsWith("colours: [red, pale-green]")).isEqualTo("shelf.yaml:2:16: 'pale-green';"
                    + " expected one of red, pale green or blue; did you mean 'pale green'?");
            assertThat(problemsWith("colours: Blue")).endsWith("did you mean 'blue'?");
            assertThat(problemsWith("goods: foma")).isEqualTo("shelf.yaml:2:8: 'foma';"
                    + " expected one of foam, butyl sheet or nothing; did you mean 'foam'?");
            assertThat(problemsWith("colours: magnificent")).isEqualTo(
                    "shelf.yaml:2:10: 'magnificent'; expected one of red, pale green or blue");
        }

        @Test
        @DisplayName("a block where one value is wanted, and one value where a block is wanted")
        void wrongForm() {
            assertThat(problemsWith("boards: {upper: 2}")).isEqualTo(
                    "shelf.yaml:2:9: a block of keys; expected a whole number from 1 to 9");
            assertThat(problemsWith("place: attic")).isEqualTo(
                    "shelf.yaml:2:8: 'attic'; expected the keys wall or room");
            assertThat(problemsWith("goods: [[foam]]")).isEqualTo("shelf.yaml:2:9: a list;"
                    + " expected one of foam, butyl sheet or nothing; or the keys kind or pieces");
            assertThat(problemsWith("notes: [a]")).isEqualTo(
                    "shelf.yaml:2:8: a list; expected names, each with text");
            assertThat(problems("just a sentence")).startsWith(
                    "shelf.yaml:1:1: 'just a sentence'; expected the keys shelf, place, width");
        }

        @Test
        @DisplayName("too many or too few entries; a decimal comma inside brackets is a likely cause")
        void counts() {
            assertThat(problemsWith("opening: [300 mm]")).isEqualTo("shelf.yaml:2:10: 1 entry in 'opening'; expected 2,"
                    + " each a length in mm, cm, m, in or ft, from 1 mm to 1 m");
            assertThat(problemsWith("opening: [300 mm, 200 mm, 100 mm]")).isEqualTo("shelf.yaml:2:10: 3 entries in"
                    + " 'opening'; expected 2, each a length in mm, cm, m, in or ft, from 1 mm to 1 m;"
                    + " a comma parts two entries; decimals have a point");
            assertThat(problemsWith("colours: []")).isEqualTo("shelf.yaml:2:10: 0 entries in 'colours';"
                    + " expected 1 to 3, each one of red, pale green or blue");
        }

        @Test
        @DisplayName("one text where a list is wanted, with the list to write")
        void textForList() {
            String opening = "shelf.yaml:2:10: '%s' in place of a list; expected a list of 2, each a length in mm, cm, m,"
                    + " in or ft, from 1 mm to 1 m; ";
            List.of("300 mm|[300 mm, …]", "300 mm, 200 mm|[300 mm, 200 mm]", "300 x 200 mm|[300 mm, 200 mm]",
                    "30x20 cm|[30 cm, 20 cm]", "0,3 m × 0,2 m|[0.3 m, 0.2 m]", "0,3, 0,2 m|[0.3 m, 0.2 m]").forEach(pair -> {
                String written = pair.substring(0, pair.indexOf('|'));
                assertThat(problemsWith("opening: " + written)).isEqualTo(opening.formatted(written)
                        + "write '" + pair.substring(pair.indexOf('|') + 1) + "'");
            });
            List.of("300,200 mm", "300 x 200 x 100 mm", "300", "broad").forEach(written ->
                    assertThat(problemsWith("opening: " + written)).isEqualTo(opening.formatted(written)
                            + "write them in brackets, each with its unit; decimals have a point"));
            assertThat(problemsWith("colours: red, pale green,blue")).isEqualTo("shelf.yaml:2:10: 'red, pale green,blue'"
                    + " in place of a list; expected a list of 1 to 3, each one of red, pale green or blue;"
                    + " write '[red, pale green, blue]'");
            assertThat(problemsWith("colours: red, rose")).endsWith("; write them in brackets, with commas between");
            assertThat(problemsWith("goods: foam, butyl sheet")).isEqualTo("shelf.yaml:2:8: 'foam, butyl sheet' in place of"
                    + " a list; expected one of foam, butyl sheet or nothing; or the keys kind or pieces, or a list of such;"
                    + " write '[foam, butyl sheet]'");
        }

        @Test
        @DisplayName("whole numbers out of range, with a fraction, in quotes, or far too long")
        void wholeNumbers() {
            assertThat(problemsWith("boards: 10")).isEqualTo(
                    "shelf.yaml:2:9: '10'; expected a whole number from 1 to 9");
            assertThat(problemsWith("boards: '2'")).endsWith("take the quotes away");
            for (String wrong : List.of("0", "-1", "2.5", "two", "1e3", "0x2", "02", "99999999999")) {
                assertThat(problemsWith("boards: " + wrong)).contains("expected a whole number from 1 to 9");
            }
        }

        @Test
        @DisplayName("numbers, days, yes or no, and texts")
        void others() {
            assertThat(problemsWith("slope: .nan")).isEqualTo("shelf.yaml:2:8: '.nan'; expected a number");
            assertThat(problemsWith("slope: .inf")).contains("expected a number");
            assertThat(problemsWith("slope: " + "9".repeat(400))).contains("expected a number");
            assertThat(problemsWith("checked: 2026-02-30")).isEqualTo(
                    "shelf.yaml:2:10: '2026-02-30'; expected a day such as 2026-01-31");
            assertThat(problemsWith("locked: yess")).isEqualTo(
                    "shelf.yaml:2:9: 'yess'; expected yes or no; did you mean 'yes'?");
            assertThat(problems("shelf: ' '")).isEqualTo("shelf.yaml:1:8: an empty text; expected text");
        }

        @Test
        @DisplayName("values that the record itself refuses; it is not asked when some of them are missing")
        void refusedByRecord() {
            assertThat(problemsWith("place: {wall: blue, room: attic}")).isEqualTo(
                    "shelf.yaml:2:8: a blue wall in the attic; expected values that fit together");
            assertThat(problemsWith("place: {wall: blu, room: attic}")).isEqualTo("shelf.yaml:2:15: 'blu';"
                    + " expected one of red, pale green or blue; did you mean 'blue'?");
        }

        @Test
        @DisplayName("a very long value is cut short in the message")
        void longValue() {
            assertThat(problemsWith("locked: " + "x".repeat(5000))).hasSizeLessThan(120);
        }
    }

    @Test
    @DisplayName("All problems of a file come at once, by place")
    void allAtOnce() {
        String yaml = "colours: purple\nplace: {room: attic, wall: rde}\nshelf: left\nwidth: 30\nboards: many\n";
        assertThat(problems(yaml).lines().map(line -> line.substring(0, line.indexOf(": "))))
                .containsExactly("shelf.yaml:1:10", "shelf.yaml:2:28", "shelf.yaml:4:8", "shelf.yaml:5:9");
    }

    @Nested
    @DisplayName("One screen")
    class OneScreen {
        private Problems goods(String... pieces) {
            StringBuilder yaml = new StringBuilder("shelf: left\ngoods:\n");
            for (String text : pieces) {
                yaml.append("- {kind: foam, pieces: ").append(text).append("}\n");
            }
            return catchThrowableOfType(Problems.class, () -> shelf(yaml.toString()));
        }

        @Test
        @DisplayName("shows the first problems and counts the others")
        void counts() {
            Problems five = goods("a", "b", "c", "d", "e");
            assertThat(five.first(2)).isEqualTo("shelf.yaml:3:24: 'a'; expected a whole number\n"
                    + "shelf.yaml:4:24: 'b'; expected a whole number\nand 3 more like these");
            assertThat(five.first(5)).doesNotContain("more").hasLineCount(5);
            Problems alike = new Problems(Collections.nCopies(5, Problem.ofFile("a", "b", "c", "d")));
            assertThat(alike.first(2)).isEqualTo("a: b; expected c; d\na: b; expected c; d\nand 3 more like these");
        }

        @Test
        @DisplayName("never counts a mistake of another kind among them")
        void everyKind() {
            assertThat(goods("a", "b", "c", "d", "'5'").first(2)).isEqualTo("shelf.yaml:3:24: 'a'; expected a whole"
                    + " number\nshelf.yaml:7:24: '5'; expected a whole number; take the quotes away\nand 3 more like these");
            assertThat(goods("a, piece: 4", "b, colour: red", "c", "'5'").first(1).lines()).hasSize(5)
                    .last().isEqualTo("and 2 more like these");
        }

        @Test
        @DisplayName("takes the same mistake with other numbers for one of the same kind")
        void otherNumbers() {
            Problems units = catchThrowableOfType(Problems.class,
                    () -> with("weights: {a: 1.5, b: 2, c: 3 mm, d: 40}"));
            assertThat(units.first(1)).isEqualTo("shelf.yaml:2:14: '1.5' without a unit; expected a mass in kg, g or lb;"
                    + " did you mean '1.5 kg'?\nshelf.yaml:2:28: '3 mm' is a length; expected a mass in kg, g or lb\n"
                    + "and 2 more like these");
        }
    }
}
