package unthrum.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import unthrum.Scenarios;
import unthrum.drill.Exercise;
import unthrum.drill.Practice;
import unthrum.drill.Progress;
import unthrum.drill.ProgressFile;
import unthrum.drill.Spoken;

@DisplayName("drill")
class DrillCommandTest {

    private static final Clock NOON = Clock.fixed(Instant.parse("2026-03-10T12:00:00Z"), ZoneOffset.UTC);
    private static final String SURVEY = "scenarios/one-pack-hatchback.yaml";
    private static final List<Exercise> SEVEN = new Practice(Scenarios.KNOWLEDGE, Scenarios.CATALOGUE).made(7, 2);

    @TempDir
    private Path folder;

    private final Map<String, String> environment = new HashMap<>();
    private Path progress;

    /** What a run left behind. */
    private record Run(int code, String out, String err) {
    }

    @BeforeEach
    void ownProgress() {
        progress = folder.resolve("mine.yaml");
    }

    private Run run(InputStream typed, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Main.run(new Surroundings(new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8), environment, false, StandardCharsets.UTF_8, typed,
                NOON), arguments);
        return new Run(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private Run run(String typed, String... arguments) {
        return run(input(typed), arguments);
    }

    private static InputStream input(String typed) {
        return new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8));
    }

    private Run drill(String typed, String... more) {
        return run(typed, join(List.of("drill", "--progress", progress.toString()), more));
    }

    private static String[] join(List<String> first, String... more) {
        return java.util.stream.Stream.concat(first.stream(), java.util.Arrays.stream(more)).toArray(String[]::new);
    }

    private Progress kept() {
        return new ProgressFile(progress).read();
    }

    /** What the case itself would have one type. */
    private static String typed(Exercise exercise) {
        return Spoken.of(exercise.outcome(), exercise) + "\n" + why(exercise, " ") + "\n";
    }

    private static String why(Exercise exercise, String between) {
        return exercise.ownAnswer().why().stream().map(String::valueOf).collect(Collectors.joining(between));
    }

    private Path answers(String text) throws IOException {
        return Files.writeString(folder.resolve("answers.yaml"), text);
    }

    private static String sheet(Exercise exercise) {
        return "  - {gets: '" + Spoken.of(exercise.outcome(), exercise) + "', why: [" + why(exercise, ", ") + "]}\n";
    }

    private static void assertWrongUse(Run run, String says) {
        assertThat(run.code).isEqualTo(2);
        assertThat(run.out).isEmpty();
        assertThat(run.err).contains(says).doesNotContain("Exception");
    }

    @Nested
    @DisplayName("asked by line")
    class Asked {

        @Test
        @DisplayName("ends with 0 when every answer is right, and keeps each")
        void right() {
            Run run = drill(typed(SEVEN.get(0)) + typed(SEVEN.get(1)), "--seed", "7", "--count", "2");
            assertThat(run.out).contains("Panel 1 of 2", "Panel 2 of 2", "Right.", "2 panels answered: 2 right");
            assertThat(run.err).isEmpty();
            assertThat(run.code).isZero();
            assertThat(kept().practised()).isNotEmpty().allSatisfy(p -> assertThat(p.right()).isEqualTo(p.asked()));
            assertThat(kept().practised()).allSatisfy(p -> assertThat(p.due()).isAfter(LocalDate.of(2026, 3, 10)));
        }

        @Test
        @DisplayName("ends with 1 when an answer is wrong, with the case, its numbers and what is to be learned")
        void wrong() {
            Run run = drill("heat shield\nnone\n", SURVEY, "footwell-driver");
            assertThat(run.code).isEqualTo(1);
            assertThat(run.out).contains("Wrong.", "The case: ", "1 panel answered: 0 right")
                    .containsPattern("\\[[a-z]+/[a-z-]+]").doesNotContain("null");
            assertThat(run.out.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
        }

        @Test
        @DisplayName("asks again for what it does not understand")
        void again() {
            Run run = drill("dampin 1\n" + typed(SEVEN.get(0)), "--seed", "7", "--count", "1");
            assertThat(run.out).contains("did you mean", "'damping'?");
            assertThat(run.code).isZero();
        }

        @ParameterizedTest
        @ValueSource(strings = {"", "stop\n"})
        @DisplayName("keeps what was answered when no more is typed")
        void stopped(String end) {
            Run run = drill(typed(SEVEN.get(0)) + end, "--seed", "7", "--count", "2");
            assertThat(run.code).isZero();
            assertThat(run.out).contains("1 panel answered");
            assertThat(kept().practised()).extracting(p -> p.subject())
                    .containsExactlyElementsOf(SEVEN.get(0).subjects());
        }

        @Test
        @DisplayName("keeps what was answered when it is broken off in the middle of an answer")
        void brokenOff() {
            InputStream broken = new InputStream() {
                @Override
                public int read() throws IOException {
                    throw new IOException("the terminal is gone");
                }
            };
            Run run = run(new SequenceInputStream(input(typed(SEVEN.get(0)) + "damping\n"), broken), "drill",
                    "--progress", progress.toString(), "--seed", "7", "--count", "2");
            assertThat(run.code).isEqualTo(2);
            assertThat(run.err).contains("the terminal is gone");
            assertThat(kept().practised()).extracting(p -> p.asked()).isNotEmpty().containsOnly(1);
        }

        @Test
        @DisplayName("without a seed brings other subjects once those it brought first are not due")
        void spaced() {
            assertThat(drill("stop\n", "--count", "1").code).isZero();
            assertThat(progress).doesNotExist();
            Run first = drill("wait\nnone\n", "--count", "1");
            Run second = drill("stop\n", "--count", "1");
            assertThat(heading(second)).isNotEqualTo(heading(first));
        }

        private String heading(Run run) {
            return run.out.lines().filter(l -> l.startsWith("Panel 1 of 1")).findFirst().orElseThrow();
        }
    }

    @Nested
    @DisplayName("answered from a file")
    class Answered {

        @Test
        @DisplayName("marks as many panels as the file answers")
        void marked() throws IOException {
            Path file = answers("answers:\n" + sheet(SEVEN.get(0)) + "  - {gets: wear face, why: none}\n");
            Run run = drill("", "--seed", "7", "--answers", file.toString());
            assertThat(run.code).isEqualTo(1);
            assertThat(run.out).contains("Answered: ", "1 right, 0 right for the wrong reason, 1 wrong");
            Path right = answers("answers:\n" + sheet(SEVEN.get(0)) + sheet(SEVEN.get(1)));
            assertThat(drill("", "--seed", "7", "--answers", right.toString()).code).isZero();
        }

        @Test
        @DisplayName("says where the file is faulty, all at once, and keeps nothing")
        void faulty() throws IOException {
            Path file = answers("answers:\n  - {gets: dampin, why: [1]}\n  - {gets: nothing, why: [1, 77]}\n");
            Run run = drill("", "--seed", "7", "--answers", file.toString());
            assertWrongUse(run, "answers.yaml:2:12: 'dampin'; expected");
            assertThat(run.err).contains("answers.yaml:3:30: '77'");
            assertThat(progress).doesNotExist();
        }

        @Test
        @DisplayName("wants an answer to each panel, and panels that are known beforehand")
        void count() throws IOException {
            Path file = answers("answers:\n  - {gets: nothing, why: none}\n");
            assertWrongUse(drill("", "--seed", "7", "--count", "2", "--answers", file.toString()),
                    "one for each of the 2");
            assertWrongUse(drill("", "--answers", file.toString()), "give --seed N");
        }
    }

    @Test
    @DisplayName("--sheet prints the same panels for the same seed and keeps nothing")
    void sheets() {
        Run run = drill("", "--seed", "7", "--count", "2", "--sheet");
        assertThat(run.code).isZero();
        assertThat(run.out).contains("Panel 2 of 2", "Reasons to choose from")
                .isEqualTo(drill("", "--seed", "7", "--count", "2", "--sheet").out);
        assertThat(progress).doesNotExist();
    }

    @Test
    @DisplayName("--report shows the master what was asked, right, right for the wrong reason, and when it is due")
    void report() {
        assertThat(drill("", "--report").out).contains("Nothing was practised yet");
        drill(typed(SEVEN.get(0)), "--seed", "7", "--count", "1");
        Run run = drill("", "--report");
        assertThat(run.code).isZero();
        assertThat(run.out).contains("subject", "asked", "wrong reason", "due next", "2026-03-12",
                "Never practised yet");
        SEVEN.get(0).subjects().forEach(subject -> assertThat(run.out).contains("\n" + subject));
    }

    @Test
    @DisplayName("keeps progress in the user's data folder when no file is named")
    void dataFolder() {
        environment.put("HOME", folder.toString());
        run(typed(SEVEN.get(0)), "drill", "--seed", "7", "--count", "1");
        assertThat(folder.resolve(".local/share/unthrum/progress.yaml")).exists();
        environment.put("XDG_DATA_HOME", folder.resolve("data").toString());
        run(typed(SEVEN.get(0)), "drill", "--seed", "7", "--count", "1");
        assertThat(folder.resolve("data/unthrum/progress.yaml")).exists();
        environment.put("XDG_DATA_HOME", "not/absolute");
        assertThat(run("", "drill", "--report").out).contains(".local/share/unthrum/progress.yaml");
    }

    @Test
    @DisplayName("a damaged progress file is told by its place before anything is asked, and left as it is")
    void damaged() throws IOException {
        Files.writeString(progress, "practised:\n  - {subject: heat, asked: many}\n");
        assertWrongUse(drill("", "--seed", "7"), "mine.yaml:2:28: 'many'; expected a whole number");
        assertThat(progress).hasContent("practised:\n  - {subject: heat, asked: many}\n");
    }

    @Test
    @DisplayName("wrong use is told in a line")
    void wrongUse() {
        assertWrongUse(drill("", "--count", "0"), "give 1 to 100");
        assertWrongUse(drill("", "--report", "--seed", "1"), "--report stands alone");
        assertWrongUse(drill("", SURVEY, "wing"), "no panel 'wing'");
        assertWrongUse(run("", "drill", "--progress", folder.resolve("no/such/mine.yaml").toString()), "no folder");
    }
}
