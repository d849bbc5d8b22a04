package unthrum.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import unthrum.reading.Problem;
import unthrum.reading.Problems;

@Label("A survey in which keys, marks and lines were damaged at random")
class MutatedSurveysTest {
    private static final String GOOD = good();
    private static final List<String> SCRAPS = List.of(":", "- ", "[", "]", "{", "}", ",", "'", "\"", "#", "&a ", "*a",
            "!!x ", "|\n", "? ", "\n", "\t", "  ", "none", "unknown", "NaN", "-1", "9999999999999", "mm", "0", "\u0000",
            "\uFEFF", "\u20AC", "---\n", "...\n", "%YAML 1.1\n", "panel: x\n", "null", "~", "@", "`", "\uD83D\uDE00", "\uD83D");

    private static String good() {
        try (InputStream in = MutatedSurveysTest.class.getResourceAsStream("workshop.yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** One piece of damage: so many characters at this place give way to a scrap. */
    record Damage(int at, int length, String scrap) {
        String to(String text) {
            int start = at % text.length();
            return text.substring(0, start) + scrap + text.substring(Math.min(text.length(), start + length));
        }
    }

    @Provide
    Arbitrary<List<Damage>> damages() {
        return Combinators.combine(Arbitraries.integers().between(0, GOOD.length() - 1),
                Arbitraries.integers().between(0, 40), Arbitraries.of(SCRAPS)).as(Damage::new)
                .list().ofMinSize(1).ofMaxSize(6);
    }

    @Property(tries = 1000)
    @Label("is read, or every problem has a place within it and says what is expected")
    void readOrProblems(@ForAll("damages") List<Damage> damages) {
        String text = GOOD;
        for (Damage damage : damages) {
            text = damage.to(text);
        }
        long lines = text.lines().count() + 1;
        try {
            assertThat(SurveyReader.read("van.yaml", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)))
                    .panels()).isNotEmpty();
        } catch (Problems problems) {
            assertThat(problems.all()).isNotEmpty().isSortedAccordingTo(
                    java.util.Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column));
            assertThat(problems.all()).allSatisfy(p -> {
                assertThat(p.line()).isBetween(1, (int) lines);
                assertThat(p.column()).isPositive();
                assertThat(p.found()).isNotBlank();
                assertThat(p.expected()).isNotBlank();
            });
        }
    }

    @Property(tries = 300)
    @Label("as bytes, is read or refused in the same way")
    void anyBytes(@ForAll("damagedBytes") byte[] bytes) {
        try {
            assertThat(SurveyReader.read("van.yaml", new ByteArrayInputStream(bytes)).panels()).isNotEmpty();
        } catch (Problems problems) {
            assertThat(problems.all()).isNotEmpty();
        }
    }

    @Provide
    Arbitrary<byte[]> damagedBytes() {
        byte[] good = GOOD.getBytes(StandardCharsets.UTF_8);
        return Combinators.combine(Arbitraries.integers().between(0, good.length - 1), Arbitraries.bytes())
                .as((at, value) -> {
                    byte[] bytes = good.clone();
                    bytes[at] = value;
                    return bytes;
                });
    }
}
