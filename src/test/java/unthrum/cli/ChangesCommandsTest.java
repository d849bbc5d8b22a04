package unthrum.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import java.io.IOException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("The commands that turn a panel over")
class ChangesCommandsTest {
    private static final String SURVEY = "scenarios/one-pack-hatchback.yaml";
    private static final String PANEL = "boot-floor";

    private static String printed(String... arguments) {
        Ended ended = Ended.of(arguments);
        assertThat(ended.err()).isEmpty();
        assertThat(ended.code()).isZero();
        return ended.out();
    }

    private static JsonNode keeping(String schema, String json) {
        try {
            JsonNode read = new ObjectMapper().readTree(json);
            assertThat(JsonSchemaFactory.getInstance(VersionFlag.V202012).getSchema(printed("schema", schema))
                    .validate(read)).isEmpty();
            return read;
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static void assertRefused(String says, String... arguments) {
        Ended ended = Ended.of(arguments);
        assertThat(ended.code()).isEqualTo(2);
        assertThat(ended.out()).isEmpty();
        assertThat(ended.err()).contains(says).doesNotContain("Exception");
    }

    private static void assertReadable(String text) {
        assertThat(text.lines()).allMatch(l -> l.length() <= 80);
        assertThat(text).doesNotContain("null", "NaN", "Optional", "[]");
    }

    @Nested
    @DisplayName("why --changes")
    class Changes {
        @Test
        @DisplayName("says what the panel does not get, what would change it and how sure it is, and not its case")
        void text() {
            String text = printed("why", SURVEY, PANEL, "--changes");
            assertReadable(text);
            assertThat(text).containsSubsequence("Why not", "What would change it", "How sure it is")
                    .doesNotContain("For and against", "Materials compared");
        }

        @Test
        @DisplayName("keeps to one layer when asked for one, and with --teach says what each rule would need")
        void layer() {
            String all = printed("why", SURVEY, PANEL, "--changes");
            String one = printed("why", SURVEY, PANEL, "insulation", "--changes");
            String taught = printed("why", SURVEY, PANEL, "insulation", "--changes", "--teach");
            assertThat(one.lines().count()).isLessThan(all.lines().count());
            assertThat(taught.lines().count()).isGreaterThan(one.lines().count());
            assertThat(taught).contains("it would need");
        }

        @Test
        @DisplayName("prints JSON by its schema")
        void json() {
            assertThat(keeping("changes", printed("why", SURVEY, PANEL, "--changes", "--json")).get("panel").asText())
                    .isEqualTo(PANEL);
        }
    }

    @Nested
    @DisplayName("why --if")
    class WhatIf {
        @Test
        @DisplayName("shows the panel as it would be beside today's")
        void text() {
            String text = printed("why", SURVEY, PANEL, "--if", "reach=none");
            assertReadable(text);
            assertThat(text).contains("reach", "'none'").doesNotContain("How sure");
        }

        @Test
        @DisplayName("takes several edits and prints JSON by its schema")
        void json() {
            JsonNode json = keeping("what-if", printed("why", SURVEY, PANEL, "--if", "reach=none", "--if", "wet=wet",
                    "--json"));
            assertThat(json.get("turns")).hasSize(2);
            assertThat(json.at("/then/verdict").asText()).isEqualTo("hold");
            assertThat(json.at("/today/verdict").asText()).isNotEqualTo("hold");
        }

        @Test
        @DisplayName("refuses what the survey would refuse, and two questions at once")
        void refused() {
            assertRefused("--if 'reach=opne': 'opne'", "why", SURVEY, PANEL, "--if", "reach=opne");
            assertRefused("--if 'clearance=0.1 mm': a clearance of 0.1 mm", "why", SURVEY, PANEL, "--if",
                    "clearance=0.1 mm");
            assertRefused("no fact 'colour'", "why", SURVEY, PANEL, "--if", "colour=red", "--json");
            assertRefused("--if or --changes", "why", SURVEY, PANEL, "--if", "reach=none", "--changes");
        }
    }

    @Nested
    @DisplayName("ask")
    class Asking {
        @Test
        @DisplayName("numbers what to measure and lists what need not be")
        void text() {
            String text = printed("ask", SURVEY);
            assertReadable(text);
            assertThat(text).containsSubsequence("what to measure next", "1. ", "How: ", "At stake: ",
                    "Need not be measured");
        }

        @Test
        @DisplayName("asks about one panel when told so, and prints JSON by its schema")
        void json() {
            JsonNode json = keeping("questions", printed("ask", SURVEY, "--panel", PANEL, "--json"));
            assertThat(json.get("questions")).isNotEmpty()
                    .allSatisfy(q -> assertThat(q.get("panel").asText()).isEqualTo(PANEL));
            assertRefused("no panel 'wing'", "ask", SURVEY, "--panel", "wing");
        }
    }

    @Nested
    @DisplayName("advise --doubtful")
    class Doubtful {
        @Test
        @DisplayName("shows the panels that are worth an older hand's look, and prints JSON by its schema")
        void both() {
            String text = printed("advise", SURVEY, "--doubtful");
            assertReadable(text);
            JsonNode json = keeping("doubts", printed("advise", SURVEY, "--doubtful", "--json"));
            assertThat(json.get("panels")).isNotEmpty()
                    .allSatisfy(p -> assertThat(text).contains(p.get("panel").asText()));
        }
    }
}
