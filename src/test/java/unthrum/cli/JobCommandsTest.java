package unthrum.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The commands on finished jobs")
class JobCommandsTest {
    private static final String JOB = "scenarios/finished/shell-pickup.yaml";
    private static final String SURVEY = "scenarios/shell-pickup.yaml";

    private static Ended run(String... arguments) {
        return Ended.of(arguments);
    }

    /** What a command printed, held against the schema that the program publishes for it. */
    private static JsonNode published(String kind, String... arguments) throws IOException {
        JsonNode json = new ObjectMapper().readTree(run(arguments).out());
        JsonSchema schema = JsonSchemaFactory.getInstance(VersionFlag.V202012).getSchema(run("schema", kind).out());
        assertThat(schema.validate(json)).isEmpty();
        assertThat(json.get("kind").asText()).isEqualTo(kind);
        assertThat(json.get("format").asInt()).isEqualTo(1);
        return json;
    }

    @Nested
    @DisplayName("audit")
    class AuditCommand {
        @Test
        @DisplayName("puts the judgement first, the danger before the faults, and ends with 1")
        void text() {
            Ended ended = run("audit", JOB);
            assertThat(ended.code()).isEqualTo(1);
            assertThat(ended.err()).isEmpty();
            assertThat(ended.out().lines().toList().get(1)).isEqualTo("Do not release. Found: 1 danger, 6 faults, 5 unproven.");
            assertThat(ended.out()).containsSubsequence("Before the vehicle leaves", "danger     Seat bolt 1 of floor-left",
                    "[fixing/anchors-metal-to-metal]", "fault      ", "Afterwards", "What is right", "Digest");
            assertThat(ended.out().lines()).allMatch(l -> l.length() <= 80);
        }

        @Test
        @DisplayName("ends with 0 where nothing reaches the severity asked for, and with 2 for one that there is not")
        void failOn() {
            assertThat(run("audit", JOB, "--fail-on", "never").code()).isZero();
            assertThat(run("audit", JOB, "--fail-on", "danger").code()).isEqualTo(1);
            Ended wrong = run("audit", JOB, "--fail-on", "dangers");
            assertThat(wrong.code()).isEqualTo(2);
            assertThat(wrong.err()).contains("danger, fault, waste, unproven, never");
        }

        @Test
        @DisplayName("prints JSON by its schema with all that the text says")
        void json() throws IOException {
            JsonNode json = published("audit", "audit", JOB, "--json");
            assertThat(json.get("release").asText()).isEqualTo("do not release");
            assertThat(json.get("findings")).hasSize(12);
            assertThat(json.at("/findings/0/severity").asText()).isEqualTo("danger");
            assertThat(json.at("/findings/0/place/part").asText()).isEqualTo("seat bolt 1");
        }

        @Test
        @DisplayName("refuses a survey in place of an as-built file in one line that says how to start one, and ends with 2")
        void notBuilt() {
            Ended ended = run("audit", SURVEY);
            assertThat(ended.code()).isEqualTo(2);
            assertThat(ended.out()).isEmpty();
            assertThat(ended.err().lines()).singleElement().asString().startsWith(SURVEY + ":")
                    .contains("a survey; expected an as-built file", "jobcard SURVEY --as-built FILE");
        }
    }

    @Nested
    @DisplayName("handover")
    class HandoverCommand {
        @Test
        @DisplayName("tells the owner what was done, left and measured")
        void text() {
            Ended ended = run("handover", JOB, "--width", "400");
            assertThat(ended.code()).isZero();
            assertThat(ended.out()).contains("What was done", "What was left as it was, and why",
                    "Floor-right: the panel has live rust", "81.5 dB before, 74 dB after", "Local vehicle rules decide");
            assertThat(ended.out()).as("only measured before").doesNotContain("71 °C");
            assertThat(ended.out()).as("a bolt under foam is not said to be free").doesNotContain("torque: seat bolt 1");
        }

        @Test
        @DisplayName("tells what is wrong without the trade's words, a danger as such, one trial once")
        void open() {
            String out = run("handover", JOB, "--width", "400").out();
            String first = out.substring(out.indexOf("Still to be done"), out.indexOf("What was done"));
            assertThat(first).contains(
                    "Seat bolt 1 of floor-left: danger, do not drive: a layer against heat and cold",
                    "Tunnel: a heavy sheet against noise from outside (vinyl-barrier-2) does not bear the heat",
                    "Drain 1 of floor-behind-seat: water does not run out of the drains.",
                    "Empty grommet hole 2 of bulkhead-upper: closing a hole was left undone.");
            assertThat(first.lines().filter(l -> l.contains("Drain 1"))).hasSize(1);
            assertThat(first).doesNotContain("veto", "[", "limit", "duty");
        }

        @Test
        @DisplayName("prints JSON by its schema with the sections of the text")
        void json() throws IOException {
            JsonNode json = published("handover", "handover", JOB, "--json");
            assertThat(json.get("release").asText()).isEqualTo("do not release");
            assertThat(json.get("sections")).extracting(s -> s.get("topic").asText())
                    .startsWith("still to be done", "done", "left").contains("measured");
            String text = run("handover", JOB, "--width", "400").out();
            json.get("sections").forEach(s -> s.get("lines").forEach(l -> assertThat(text).contains(l.asText())));
            assertThat(run("handover", JOB, "--json", "--page", "owner.html").code()).isEqualTo(2);
        }

        @Test
        @DisplayName("writes one page without scripts, links or anything fetched, and replaces an older one")
        void page(@TempDir Path folder) throws IOException {
            Path page = Files.writeString(folder.resolve("owner.html"), "old");
            assertThat(run("handover", JOB, "--page", page.toString()).code()).isZero();
            String html = Files.readString(page);
            assertThat(html).startsWith("<!DOCTYPE html>").contains("@media print", "<html lang=\"en\">", "What was done");
            assertThat(html).doesNotContain("<script", "http", "src=", "style=", "onclick");
            assertThat(folder).isDirectoryNotContaining("glob:**.part");
            assertThat(run("handover", JOB, "--page", folder.resolve("none/owner.html").toString()).code()).isEqualTo(2);
        }
    }

    @Nested
    @DisplayName("compare")
    class CompareCommand {
        @Test
        @DisplayName("shows what was fitted against what was planned")
        void fitted() {
            Ended ended = run("compare", SURVEY, JOB);
            assertThat(ended.code()).isZero();
            assertThat(ended.out()).contains("3 panels treated otherwise", "tunnel", "bed-gate", "floor-behind-seat");
        }

        @Test
        @DisplayName("finds nothing between a file and itself")
        void same() {
            assertThat(run("compare", SURVEY, SURVEY).out()).contains("Nothing differs.");
        }

        @Test
        @DisplayName("prints JSON by its schema: layups, rules, mass, money and effects of each panel that differs")
        void json() throws IOException {
            JsonNode json = published("comparison", "compare", SURVEY, JOB, "--json");
            JsonNode gate = null;
            for (JsonNode changed : json.get("changed")) {
                gate = changed.get("panel").asText().equals("bed-gate") ? changed : gate;
            }
            assertThat(gate.get("treatedOtherwise").asBoolean()).isTrue();
            assertThat(gate.at("/before/layup/mass/value").asDouble())
                    .isGreaterThan(gate.at("/after/layup/mass/value").asDouble());
            assertThat(gate.at("/before/price/amount").asDouble())
                    .isGreaterThan(gate.at("/after/price/amount").asDouble());
            assertThat(gate.get("effects")).anySatisfy(e -> {
                assertThat(e.get("kind").asText()).isEqualTo("quieter bay");
                assertThat(e.get("at").asText()).isEqualTo("bay 2");
                assertThat(e.get("before").asDouble()).isGreaterThan(e.get("after").asDouble());
            });
            assertThat(json.get("aims")).isNotEmpty();
        }

        @Test
        @DisplayName("of a file with itself is JSON in which nothing differs")
        void nothing() throws IOException {
            JsonNode json = published("comparison", "compare", SURVEY, SURVEY, "--json");
            for (String list : new String[] {"vehicle", "added", "gone", "changed", "aims"}) {
                assertThat(json.get(list)).as(list).isEmpty();
            }
        }

        @Test
        @DisplayName("shows what the rule base without a rule would have altered on a folder of past jobs")
        void rules(@TempDir Path jobs) throws IOException {
            for (String job : new String[] {"shell-pickup", "one-pack-hatchback"}) {
                Files.copy(Path.of("scenarios", job + ".yaml"), jobs.resolve(job + ".yaml"));
            }
            Ended ended = run("compare", jobs.toString(), "--without", "insulation/roof-summer", "--width", "400");
            assertThat(ended.code()).isZero();
            assertThat(ended.out()).startsWith("2 jobs, 1 treated otherwise").contains("shell-pickup.yaml against the same under the rules"
                    + " without insulation/roof-summer", "no longer").contains("[insulation/roof-summer]");
            assertThat(ended.out().lines().filter(l -> l.startsWith("now"))).noneMatch(l -> l.contains("roof-summer"));
            Ended wrong = run("compare", jobs.toString(), "--without", "insulation/roof-summers");
            assertThat(wrong.code()).isEqualTo(2);
            assertThat(wrong.err()).contains("no rule 'insulation/roof-summers'; did you mean 'insulation/roof-summer'?");
        }

        @Test
        @DisplayName("shows what other numbers would have altered on past jobs")
        void numbers(@TempDir Path folder) throws IOException {
            Path numbers = Files.writeString(folder.resolve("mine.yaml"), """
                    thresholds:
                      - {threshold: heat/margin, value: "60", meaning: much more, source: common-practice, checked: 2026-01-01}
                    """);
            Files.copy(Path.of(SURVEY), folder.resolve("a.yaml"));
            Path jobs = Files.createDirectory(folder.resolve("jobs"));
            Files.move(folder.resolve("a.yaml"), jobs.resolve("a.yaml"));
            Ended ended = run("compare", jobs.toString(), "--thresholds", numbers.toString(), "--width", "400");
            assertThat(ended.code()).isZero();
            assertThat(ended.out()).contains("a.yaml against the same under the other numbers", "[heat/peak-with-margin]");
        }

        @Test
        @DisplayName("refuses a number that the rule base does not have, of another kind, or nothing to compare with")
        void refused(@TempDir Path folder) throws IOException {
            Path numbers = Files.writeString(folder.resolve("mine.yaml"), """
                    thresholds:
                      - {threshold: heat/margins, value: 20 degC, meaning: x, source: common-practice, checked: 2026-01-01}
                      - {threshold: heat/margin, value: 20 mm, meaning: x, source: common-practice, checked: 2026-01-01}
                    """);
            Ended ended = run("compare", SURVEY, "--thresholds", numbers.toString());
            assertThat(ended.code()).isEqualTo(2);
            assertThat(ended.err()).contains("mine.yaml:2:17: no threshold 'heat/margins'", "did you mean 'heat/margin'?",
                    "'20 mm' is a length");
            assertThat(run("compare", SURVEY).code()).isEqualTo(2);
        }
    }

    @Nested
    @DisplayName("jobcard")
    class JobCardCommandTest {
        @Test
        @DisplayName("prints the steps as text or JSON by its schema")
        void prints() throws IOException {
            Ended text = run("jobcard", SURVEY);
            assertThat(text.code()).isZero();
            assertThat(text.err()).isEmpty();
            assertThat(text.out()).startsWith("Old pick-up, stripped to the shell: the order of work")
                    .containsSubsequence("2 Make safe", "Fitting, from the top down", "The floor, last", "Hand over");
            JsonNode json = new ObjectMapper().readTree(run("jobcard", SURVEY, "--json").out());
            assertThat(JsonSchemaFactory.getInstance(VersionFlag.V202012).getSchema(run("schema", "jobcard").out())
                    .validate(json)).isEmpty();
        }

        @Test
        @DisplayName("starts an as-built file that names its survey from where it lies, and audits as unproven")
        void starts(@TempDir Path folder) throws IOException {
            Path built = Files.createDirectory(folder.resolve("jobs")).resolve("built.yaml");
            Path survey = Files.copy(Path.of(SURVEY), folder.resolve("survey.yaml"));
            Path page = folder.resolve("card.html");
            Ended ended = run("jobcard", survey.toString(), "--as-built", built.toString(), "--page", page.toString());
            assertThat(ended.code()).isZero();
            assertThat(ended.out()).isEmpty();
            assertThat(Files.readString(built)).contains("of: \"../survey.yaml\"", "finished: unknown");
            assertThat(Files.readString(page)).startsWith("<!DOCTYPE html>");
            Ended audit = run("audit", built.toString(), "--fail-on", "unproven");
            assertThat(audit.code()).isEqualTo(1);
            assertThat(audit.out().lines().toList().get(1)).matches("Do not release\\. Found: \\d+ unproven\\.");
            assertThat(run("handover", built.toString()).out()).contains("Not finished yet");
            assertThat(new ObjectMapper().readTree(run("audit", built.toString(), "--json").out()).has("finished")).isFalse();
        }

        @Test
        @DisplayName("writes over no as-built file, and writes nothing when one of its targets cannot be written")
        void neverOver(@TempDir Path folder) throws IOException {
            Path built = Files.writeString(folder.resolve("built.yaml"), "mine");
            Path page = folder.resolve("card.html");
            Ended ended = run("jobcard", SURVEY, "--as-built", built.toString(), "--page", page.toString());
            assertThat(ended.code()).isEqualTo(2);
            assertThat(ended.err()).contains("is there already; nothing was written");
            assertThat(Files.readString(built)).isEqualTo("mine");
            assertThat(page).doesNotExist();
            Path other = folder.resolve("other.yaml");
            assertThat(run("jobcard", SURVEY, "--as-built", other.toString(), "--page", folder.toString()).code()).isEqualTo(2);
            assertThat(other).doesNotExist();
            assertThat(folder).isDirectoryNotContaining("glob:**.part");
        }

        @Test
        @DisplayName("takes a shop's own steps, and refuses an order that goes in a circle with the habits that make it")
        void ownSteps(@TempDir Path folder) throws IOException {
            String shipped = Files.readString(Path.of("rules", "steps.yaml"));
            Path mine = Files.writeString(folder.resolve("mine.yaml"), shipped.replace("people: 2", "people: 3"));
            assertThat(run("jobcard", SURVEY, "--steps", mine.toString()).out()).contains("3 people");
            Files.writeString(mine, shipped.replace("apart:\n\n", "  - {order: order/mine, before: [hand over], "
                    + "then: [make safe], where: everywhere, because: x, source: common-practice}\n\napart:\n\n"));
            Ended circle = run("jobcard", SURVEY, "--steps", mine.toString());
            assertThat(circle.code()).isEqualTo(2);
            assertThat(circle.out()).isEmpty();
            assertThat(circle.err()).contains("mine.yaml:", "a circle", "order/mine", "order/prove-when-done");
        }
    }
}
