package unthrum.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The grammar of sentences")
class EnglishTest {

    @ParameterizedTest
    @CsvSource({"barrier, a barrier", "absorber, an absorber", "insulation, insulation", "damping, damping",
            "orange cable, an orange cable"})
    @DisplayName("gives a noun its article, and none to what is not counted")
    void articles(String noun, String whole) {
        assertThat(English.withArticle(noun)).isEqualTo(whole);
    }

    @Test
    @DisplayName("mends the article before a word that is put in")
    void append() {
        StringBuilder said = new StringBuilder("the survey notes a ");
        English.append(said, "airbag");
        assertThat(said).hasToString("the survey notes an airbag");
        StringBuilder wanted = new StringBuilder("a ");
        English.append(wanted, "insulation");
        assertThat(wanted).hasToString("insulation");
    }

    @Test
    @DisplayName("lists things, and numbered things of one kind together")
    void lists() {
        assertThat(English.and(List.of("a", "b", "c"))).isEqualTo("a, b and c");
        assertThat(English.andNumbered(List.of("bay 1"))).isEqualTo("bay 1");
        assertThat(English.andNumbered(List.of("bay 1", "bay 3"))).isEqualTo("bays 1 and 3");
        assertThat(English.andNumbered(List.of("bay 1", "drain 3"))).isEqualTo("bay 1 and drain 3");
        assertThat(English.andNumbered(List.of("latch 1", "latch 2"), n -> " (x)"))
                .isEqualTo("latches 1 (x) and 2 (x)");
    }

    @Test
    @DisplayName("makes sentences and counts")
    void sentences() {
        assertThat(English.sentence("bay 1 rings")).isEqualTo("Bay 1 rings.");
        assertThat(English.count(1, "pack")).isEqualTo("1 pack");
        assertThat(English.count(2, "pack")).isEqualTo("2 packs");
        assertThat(English.ordinal(2)).isEqualTo("second");
    }

    @Nested
    @DisplayName("A template")
    class Templates {
        @Test
        @DisplayName("comes apart into text and slots")
        void parts() {
            assertThat(Template.of("{bay} spans {bay.span}").parts()).containsExactly(new Template.Slot("bay", ""),
                    new Template.Text(" spans "), new Template.Slot("bay", "span"));
        }

        @Test
        @DisplayName("with a slot left open is a defect")
        void broken() {
            assertThatThrownBy(() -> Template.of("{bay spans")).isInstanceOf(IllegalStateException.class);
        }
    }

    @Nested
    @DisplayName("Wrapped text")
    class Wrapped {
        @Test
        @DisplayName("breaks between words and keeps a number with its unit")
        void lines() {
            assertThat(Wrap.lines("it spans 490 mm there", 12)).containsExactly("it spans", "490 mm there");
            assertThat(Wrap.lines("", 12)).containsExactly("");
        }

        @Test
        @DisplayName("breaks a word that is longer than a line")
        void longWord() {
            assertThat(Wrap.lines("ab cdefghij", 4)).containsExactly("ab", "cdef", "ghij");
        }
    }
}
