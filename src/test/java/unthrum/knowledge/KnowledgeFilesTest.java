package unthrum.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import unthrum.job.StepTable;
import unthrum.material.Catalogue;
import unthrum.survey.Aim;
import unthrum.survey.Zone;

@DisplayName("The numbers, sources and assumptions")
class KnowledgeFilesTest {

    private static final Knowledge KNOWLEDGE = Knowledge.load();
    private static final List<RuleText> RULES = RuleText.shipped();
    private static final StepTable STEPS = StepTable.load(KNOWLEDGE);
    private static final String PROGRAM = program();

    private static String program() {
        try (Stream<Path> files = Files.walk(Path.of("src", "main", "java"))) {
            return files.filter(f -> f.toString().endsWith(".java")).map(KnowledgeFilesTest::text)
                    .collect(Collectors.joining("\n"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Set<String> all(String pattern, String text) {
        return Pattern.compile(pattern).matcher(text).results().map((MatchResult m) -> m.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Nested
    @DisplayName("a threshold")
    class Thresholds {
        private static final Set<String> USED = used();

        private static Set<String> used() {
            Set<String> used = all("number\\(\"([^\"]+)\"\\)", PROGRAM);
            RULES.forEach(r -> used.addAll(r.thresholds().values()));
            STEPS.steps().stream().flatMap(s -> s.waits().stream()).flatMap(List::stream)
                    .flatMap(w -> Stream.concat(w.least().stream(), w.most().stream())).forEach(used::add);
            for (Weight weight : Weight.values()) {
                used.add(weight.threshold());
            }
            return used;
        }

        @Test
        @DisplayName("is used by a rule, by a computation, as a weight or as a wait, and each that is used is there")
        void used_and_there() {
            assertThat(KNOWLEDGE.thresholds().stream().map(ThresholdEntry::threshold))
                    .containsExactlyInAnyOrderElementsOf(USED);
        }

        @Test
        @DisplayName("says what it means, where it comes from, and when a person last checked it")
        void told() {
            assertThat(KNOWLEDGE.thresholds()).allSatisfy(t -> {
                assertThat(t.threshold()).matches("[a-z]+/[a-z-]+");
                assertThat(t.meaning()).as(t.threshold()).hasSizeGreaterThan(10).doesNotEndWith(".");
                assertThat(t.checked()).as(t.threshold()).isAfter(LocalDate.of(2026, 1, 1));
                assertThat(KNOWLEDGE.sourceTitle(t.source())).isNotBlank();
            });
        }

        @Test
        @DisplayName("for rules stands under a subject of the rules")
        void subject() {
            Set<String> subjects = RULES.stream().map(RuleText::subject).collect(Collectors.toSet());
            subjects.addAll(List.of("weight", "usual", "enough", "audit", "cutting", "job", "tell", "worth"));
            assertThat(KNOWLEDGE.thresholds()).allSatisfy(t -> assertThat(subjects)
                    .contains(t.threshold().substring(0, t.threshold().indexOf('/'))));
        }
    }

    @Nested
    @DisplayName("a source")
    class Sources {
        @Test
        @DisplayName("is cited by a rule, a number, an aim, an assumption or a material")
        void cited() {
            Set<String> cited = new TreeSet<>();
            KNOWLEDGE.cards().forEach(c -> cited.add(c.source()));
            KNOWLEDGE.thresholds().forEach(t -> cited.add(t.source()));
            KNOWLEDGE.assumptions().forEach(a -> cited.add(a.source()));
            Stream.of(Aim.values()).map(KNOWLEDGE::aim).forEach(a -> cited.add(a.source()));
            Catalogue.load().all().forEach(m -> cited.addAll(m.published().values()));
            Catalogue.load().all().forEach(m -> m.damping().ifPresent(d -> cited.add(d.shift().source())));
            assertThat(KNOWLEDGE.sources()).allSatisfy(s -> assertThat(cited).contains(s.source()));
        }

        @Test
        @DisplayName("has a title and says what it holds")
        void titled() {
            assertThat(KNOWLEDGE.sources()).allSatisfy(s -> {
                assertThat(s.title()).hasSizeGreaterThan(20);
                assertThat(s.holds()).hasSizeGreaterThan(10).doesNotEndWith(".");
            });
        }
    }

    @Nested
    @DisplayName("an assumption")
    class Assumptions {
        @Test
        @DisplayName("holds in every zone, and is never shadowed by one before it")
        void everyZone() {
            for (String fact : facts()) {
                List<Assumption> some = KNOWLEDGE.assumptions().stream().filter(a -> a.fact().equals(fact)).toList();
                assertThat(some.get(some.size() - 1).zones()).as(fact).isEmpty();
                assertThat(some.subList(0, some.size() - 1)).as(fact).allSatisfy(a -> assertThat(a.zones()).isPresent());
                assertThat(some.stream().flatMap(a -> a.zones().stream()).flatMap(List::stream).toList()).as(fact)
                        .doesNotHaveDuplicates();
                for (Zone zone : Zone.values()) {
                    assertThat(KNOWLEDGE.assumption(fact, zone)).as(fact + " in " + zone).isPresent();
                }
            }
        }

        private static Set<String> facts() {
            return KNOWLEDGE.assumptions().stream().map(Assumption::fact).collect(Collectors.toSet());
        }

        @Test
        @DisplayName("gives a reason in a clause, and a source or mark")
        void reasons() {
            assertThat(KNOWLEDGE.assumptions()).allSatisfy(a -> {
                assertThat(a.because()).as(a.fact()).hasSizeBetween(15, 160).matches("[a-z].*[^.]");
                assertThat(KNOWLEDGE.sourceTitle(a.source())).isNotBlank();
            });
        }
    }

    @Test
    @DisplayName("a question names a key of the survey that can be left open")
    void questions() {
        Set<String> open = KNOWLEDGE.assumptions().stream().map(Assumption::fact).collect(Collectors.toSet());
        open.add("lid");
        assertThat(RULES.stream().flatMap(r -> r.consequences().stream())
                .flatMap(c -> all("new Question\\(.*, \"([^\"]+)\"\\)", c).stream()))
                .isNotEmpty().allSatisfy(key -> assertThat(open).contains(key));
    }
}
