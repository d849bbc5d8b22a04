package unthrum.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The commands")
class CommandsTest {

    private static final String SURVEY = "scenarios/one-pack-hatchback.yaml";
    private static final String SCARCE = "scenarios/travelling-bicycle-workshop.yaml";

    @TempDir
    private Path folder;

    private final Map<String, String> environment = new HashMap<>();
    private boolean terminal;

    /** What a run left behind. */
    private record Run(int code, String out, String err) {
    }

    private Run run(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Main.run(new Surroundings(new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8), environment, terminal, StandardCharsets.UTF_8),
                arguments);
        return new Run(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private Path write(String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static void assertWrongUse(Run run, String message) {
        assertThat(run.code).isEqualTo(2);
        assertThat(run.out).isEmpty();
        assertThat(run.err).contains(message).doesNotContain("\tat ").doesNotContain("Exception");
        assertThat(run.err.lines().count()).isLessThanOrEqualTo(24);
    }

    @Nested
    @DisplayName("advise")
    class AdviseRuns {
        @Test
        @DisplayName("prints the plan and nothing on the error stream")
        void plan() {
            Run run = run("advise", SURVEY);
            assertThat(run.code).isZero();
            assertThat(run.err).isEmpty();
            assertThat(run.out).startsWith("One pack for a small hatchback\n").contains("Panel by panel")
                    .doesNotContain("\u001b");
        }

        @Test
        @DisplayName("plans several files one after the other")
        void several() {
            Run run = run("advise", SURVEY, SURVEY);
            assertThat(run.out.split("One pack for a small hatchback\n", -1)).hasSize(3);
        }

        @Test
        @DisplayName("takes its width from the option, or else from COLUMNS, yet no wider than the eye can follow")
        void width() {
            environment.put("COLUMNS", "60");
            assertThat(run("advise", SURVEY).out.lines().mapToInt(String::length).max().orElse(0)).isBetween(50, 60);
            assertThat(run("advise", SURVEY, "--width", "110").out.lines().mapToInt(String::length).max().orElse(0))
                    .isBetween(90, 110);
            assertWrongUse(run("advise", SURVEY, "--width", "5"), "give 40 to 400");
            environment.put("COLUMNS", "250");
            assertThat(run("advise", SURVEY).out).isEqualTo(run("advise", SURVEY, "--width", "120").out);
        }

        @Test
        @DisplayName("shares for as long as it is told, and says that there may be better")
        void time() {
            assertThat(run("advise", SCARCE, "--time", "0.01 s").out).contains("The best found in the time given.");
            assertWrongUse(run("advise", SCARCE, "--time", "soon"), "--time 'soon': give a time such as '30 s'");
        }

        @Test
        @DisplayName("colours only for a terminal that wants it")
        void colour() {
            terminal = true;
            assertThat(run("advise", SURVEY).out).contains("\u001b[");
            assertThat(run("advise", SURVEY, "--plain").out).doesNotContain("\u001b[");
            environment.put("NO_COLOR", "1");
            assertThat(run("advise", SURVEY).out).doesNotContain("\u001b[");
            environment.clear();
            environment.put("TERM", "dumb");
            assertThat(run("advise", SURVEY).out).doesNotContain("\u001b[");
        }

        @Test
        @DisplayName("names the panels that there are when one is asked for that is not")
        void noPanel() {
            assertWrongUse(run("advise", SURVEY, "--panel", "wing"), "no panel 'wing'");
        }

        @Test
        @DisplayName("reports the problems of a faulty file, one screen of them, and plans nothing")
        void faulty() {
            Path bad = write("bad.yaml", "survey: x\nvehicle: {body: van, drive: diesel, use: daily}\naims: [rattles]\n"
                    + "panels:\n" + "  - {panel: p, zone: roof, size: [1 parsec, 2 m]}\n".repeat(40));
            Run run = run("advise", SURVEY, bad.toString());
            assertWrongUse(run, "bad.yaml:5:");
            assertThat(run.err).contains("more");
        }

        @Test
        @DisplayName("refuses to set aside a rule that there is not, or on a day to come")
        void overrules() {
            Path bad = write("bad.yaml", "survey: x\nvehicle: {body: van, drive: diesel, use: daily}\naims: [rattles]\n"
                    + "panels:\n  - panel: p\n    zone: roof\n    size: [1 m, 2 m]\n"
                    + "    overrules: [{rule: wear/fet, why: none, who: A, when: 2999-01-01}]\n");
            Run run = run("advise", bad.toString());
            assertWrongUse(run, "bad.yaml:8:24: no rule 'wear/fet'; expected the id of a rule;"
                    + " did you mean 'wear/feet'?");
            assertThat(run.err).contains("bad.yaml:8:59: the day 2999-01-01, which is to come");
        }

        @ParameterizedTest
        @ValueSource(strings = {"", "a: [b", "- 1\n- 2\n", "survey: 1\n---\nsurvey: 2\n", "\0\1\2"})
        @DisplayName("has one plain message for what is no survey at all")
        void noSurvey(String text) {
            assertWrongUse(run("advise", write("none.yaml", text).toString()), "none.yaml");
        }

        @Test
        @DisplayName("says when there is no such file, or only a folder")
        void noFile() {
            assertWrongUse(run("advise", folder.resolve("gone.yaml").toString()), "gone.yaml");
            assertWrongUse(run("advise", folder.toString()), folder.toString());
        }
    }

    @Nested
    @DisplayName("why")
    class WhyRuns {
        @Test
        @DisplayName("prints the case of one panel, of one layer when asked, as JSON when asked")
        void cases() {
            assertThat(run("why", SURVEY, "tunnel").out).startsWith("tunnel: ").contains("For a barrier");
            assertThat(run("why", SURVEY, "tunnel", "barrier").out).contains("(barrier only)");
            assertThat(run("why", SURVEY, "tunnel", "--json").out).startsWith("{").contains("\"kind\" : \"case\"");
        }

        @Test
        @DisplayName("names what there is when asked for what is not")
        void unknown() {
            assertWrongUse(run("why", SURVEY, "tunel"),
                    "no panel 'tunel' in 'One pack for a small hatchback'; did you mean 'tunnel'? there are: ");
            assertWrongUse(run("why", SURVEY, "wing"), "no panel 'wing' in 'One pack for a small hatchback'; there are: ");
            assertWrongUse(run("why", SURVEY, "tunnel", "paint"), "no layer 'paint'; there are: ");
            assertWrongUse(run("why", SURVEY, "tunnel", "dampnig"), "no layer 'dampnig'; did you mean 'damping'? there are: ");
            assertWrongUse(run("why", SURVEY), "PANEL");
        }
    }

    @Nested
    @DisplayName("new")
    class NewRuns {
        private static final List<String> BODIES = New.BODIES;

        @ParameterizedTest
        @FieldSource("BODIES")
        @DisplayName("writes a survey that can be planned at once")
        void starts(String body) {
            String file = folder.resolve(body + ".yaml").toString();
            assertThat(run("new", body, file).code).isZero();
            assertThat(run("advise", file).code).isZero();
            assertThat(run("new", body).out).isEqualTo(run("new", body, "-").out).startsWith("#");
        }

        @Test
        @DisplayName("never overwrites, and leaves no half a file")
        void never() throws IOException {
            Path file = write("mine.yaml", "mine");
            assertWrongUse(run("new", "van", file.toString()), "is there already");
            assertThat(file).hasContent("mine");
            assertWrongUse(run("new", "van", folder.resolve("no/where.yaml").toString()), "no folder");
            try (var files = Files.list(folder)) {
                assertThat(files).containsExactly(file);
            }
        }

        @Test
        @DisplayName("names the bodies that there are")
        void unknown() {
            assertWrongUse(run("new", "boat"), "hatchback");
        }
    }

    @Nested
    @DisplayName("rules and schema")
    class Browse {
        @Test
        @DisplayName("list all subjects, one subject, and one rule with its text and its numbers")
        void browse() {
            assertThat(run("rules").out).contains("damping/ringing-bay").contains("safety/airbag-path");
            assertThat(run("rules", "damping").out).contains("damping/ringing-bay").doesNotContain("safety/");
            assertThat(run("rules", "damping/dull-near-ear").out).contains("rule \"").contains("insertLogical")
                    .contains("numbers").contains("damping/short-span = ");
            assertThat(run("rules", "tell/alike").out).startsWith("tell/alike = 0.05 %: ")
                    .containsPattern("tried\\s0.04\\s%\\sto\\s0.06\\s%;\\s\\d+\\spanels\\sof");
            assertThat(run("rules", "usual/summer-air").out).contains("40 CFR 86.160").doesNotContain("tried");
            assertWrongUse(run("rules", "worth/kilogramm"), "did you mean 'worth/kilogram'?");
            assertWrongUse(run("rules", "paint"), "there are: access");
            assertWrongUse(run("rules", "saftey"), "no subject 'saftey'; did you mean 'safety'? there are: ");
            assertWrongUse(run("rules", "damping/0123456789"), "no rule or number 'damping/0123456789'; list a subject's rules with ");
            assertWrongUse(run("rules", "safety/airbag-pth"),
                    "no rule or number 'safety/airbag-pth'; did you mean 'safety/airbag-path'? or list a subject's rules with ");
        }

        @Test
        @DisplayName("print each schema")
        void schemas() {
            assertThat(run("schema").out).isEqualTo(run("schema", "survey").out).contains("\"$schema\"");
            assertThat(run("schema", "plan").out).contains("Plan of a vehicle");
            assertThat(run("schema", "case").out).contains("Case of a panel");
            assertWrongUse(run("schema", "song"), "no schema 'song'");
        }
    }

    @Nested
    @DisplayName("help and wrong use")
    class Help {
        @Test
        @DisplayName("give two examples first and the exit codes last")
        void help() {
            for (String command : List.of("advise", "why", "new", "rules", "schema")) {
                Run run = run(command, "-h");
                assertThat(run.code).isZero();
                assertThat(run.out.lines().limit(3)).first().isEqualTo("Examples:");
                assertThat(run.out.lines().limit(3).skip(1)).allMatch(line -> line.startsWith("  unthrum " + command));
                assertThat(run.out).contains("Exit codes:").contains("70");
                assertThat(run("--help").out).contains("  " + command + " ");
            }
        }

        @Test
        @DisplayName("every command says which unthrum and which Java it is, even without a file")
        void version() {
            for (String[] words : new String[][] {{"--version"}, {"advise", "--version"}, {"rules", "--version"}}) {
                assertThat(run(words).code).isZero();
                assertThat(run(words).out).matches("unthrum \\d+\\.\\d+\\.\\d+(-\\w+)?, Java 17.*\\R");
            }
        }

        @Test
        @DisplayName("wrong words and options are two lines on the error stream")
        void wrong() {
            assertWrongUse(run("advise"), "FILE");
            assertWrongUse(run("advise", SURVEY, "--colour"), "--colour");
            assertWrongUse(run("advice"), "advice");
            assertThat(run().code).isEqualTo(2);
        }

        @Test
        @DisplayName("a defect is one line, how to report it, and code 70; the trace only for those who ask")
        void defect() {
            ByteArrayOutputStream err = new ByteArrayOutputStream();
            Surroundings surroundings = new Surroundings(System.out, new PrintStream(err, true, StandardCharsets.UTF_8),
                    environment, false, StandardCharsets.UTF_8);
            Failures failures = new Failures(surroundings);
            assertThat(failures.defect(new IllegalStateException("a\nb"))).isEqualTo(70);
            assertThat(err.toString(StandardCharsets.UTF_8).lines()).singleElement().asString()
                    .contains("defect").contains("report").contains("UNTHRUM_TRACE");
            environment.put("UNTHRUM_TRACE", "1");
            failures.defect(new IllegalStateException("a"));
            assertThat(err.toString(StandardCharsets.UTF_8)).contains("\tat ");
        }
    }
}
