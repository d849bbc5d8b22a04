package unthrum.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import unthrum.Scenarios;
import unthrum.job.JobCard;
import unthrum.job.JobPlanner;
import unthrum.job.StepTable;
import unthrum.pieces.Bench;
import unthrum.pieces.CutPiece;
import unthrum.pieces.CutPlan;
import unthrum.pieces.Wishes;

@DisplayName("A job card on paper")
class JobCardReportTest {

    private static final JobPlanner PLANNER = new JobPlanner(Scenarios.KNOWLEDGE, StepTable.load(Scenarios.KNOWLEDGE));

    private static final Map<Path, CutPlan> CUTS = new ConcurrentHashMap<>();

    static List<Path> scenarios() {
        return Scenarios.files();
    }

    private static JobCard card(Path file) {
        return PLANNER.card(Scenarios.plan(file));
    }

    private static CutPlan cuts(Path file) {
        return CUTS.computeIfAbsent(file, f -> Bench.cut(Scenarios.plan(f), Wishes.usual()));
    }

    private static JobSheet sheet(Path file) {
        return JobSheet.of(card(file), cuts(file), Scenarios.KNOWLEDGE);
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("keeps to its width, and speaks of no nulls and no classes")
    void width(Path file) {
        for (int width : List.of(80, 120)) {
            String text = JobCardText.of(sheet(file), width, Style.PLAIN);
            assertThat(text.lines()).hasSizeGreaterThan(100).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(width));
            assertThat(text).doesNotContain("null", "Optional", "unthrum.", "{", "\t").doesNotContainPattern("[A-Z]{2,}_");
        }
    }

    @Test
    @DisplayName("has a box for every panel of a step, with its layer, and room for who and when")
    void boxes() {
        String text = JobCardText.of(sheet(Path.of("scenarios", "one-pack-hatchback.yaml")), 120, Style.PLAIN);
        assertThat(text).containsPattern("\\[ \\]  door-front-left +butyl-2 2 mm on 50 % of it, 0\\.9 kg, pieces \\d+a and \\d+b +who _+  when _+")
                .containsSubsequence("Making ready", "Make safe", "Cleaning", "Vacuum, upright", "Pieces", "Lay dry",
                        "Fitting, from the top down", "Damp, upright", "The floor, last", "Damp, floor", "Proof", "Hand over");
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("names in the steps that lay layers every piece that is cut, each once")
    void pieces(Path file) throws IOException {
        List<String> named = new ArrayList<>();
        new ObjectMapper().readTree(JobCardJson.of(card(file), cuts(file))).findValues("pieces")
                .forEach(pieces -> pieces.forEach(p -> named.add(p.asText())));
        assertThat(named).containsExactlyInAnyOrderElementsOf(cuts(file).cuts().stream()
                .flatMap(c -> c.pieces().stream().filter(p -> !c.unplaced().contains(p))).map(CutPiece::number).toList());
    }

    @Test
    @DisplayName("is written in plain letters where the terminal has no others")
    void ascii() {
        Style ascii = Style.of(false, StandardCharsets.US_ASCII);
        assertThat(JobCardText.of(sheet(Path.of("scenarios", "shell-pickup.yaml")), 80, ascii)).matches("[\\x00-\\x7F]+")
                .doesNotContain("?");
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("as JSON keeps to the published schema and names every step that the text has")
    void json(Path file) throws IOException {
        JsonSchema schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(
                JobCardReportTest.class.getResourceAsStream("/unthrum/jobcard.schema.json"));
        String json = JobCardJson.of(card(file), cuts(file));
        assertThat(schema.validate(json, InputFormat.JSON)).isEmpty();
        JsonNode steps = new ObjectMapper().readTree(json).get("steps");
        assertThat(steps).hasSize(sheet(file).sections().stream().mapToInt(s -> s.entries().size()).sum());
        for (JsonNode step : steps) {
            assertThat(step.get("after")).allSatisfy(a -> assertThat(a.get("step").asInt())
                    .isLessThan(step.get("number").asInt()));
        }
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("as a page says what the text says, without scripts and without anything fetched")
    void page(Path file) {
        JobSheet sheet = sheet(file);
        String html = JobCardPage.of(sheet);
        assertThat(html).startsWith("<!DOCTYPE html>").contains("<html lang=\"en\">", "@media print")
                .doesNotContain("<script", "http", "src=", "style=", "onclick");
        long boxes = sheet.sections().stream().flatMap(s -> s.entries().stream()).mapToLong(e -> e.boxes().size()).sum();
        assertThat(html.split("<span class=\"box\">", -1)).hasSize((int) boxes + 1);
        assertThat(sheet.sections()).allSatisfy(s -> assertThat(s.entries())
                .allSatisfy(e -> assertThat(html).contains(Markup.escaped(e.title()))));
    }

    @ParameterizedTest
    @CsvSource({"0, 5 min", "140, 5 min", "460, 10 min", "5400, 1 h 30 min", "36000, 10 h", "39000, 11 h",
        "172800, 2 d", "200000, 2 d"})
    @DisplayName("estimates times no finer than anybody can")
    void rough(double seconds, String said) {
        assertThat(Durations.rough(seconds)).isEqualTo(said);
    }

    @ParameterizedTest
    @CsvSource({"300, 900, 5 to 15 min", "7200, 43200, 2 to 12 h", "1800, 7200, 30 min to 2 h", "5400, 7200, 1 h 30 min to 2 h"})
    @DisplayName("names the unit of a range once where it is the same")
    void between(double least, double most, String said) {
        assertThat(Durations.between(least, most)).isEqualTo(said);
    }

    @Test
    @DisplayName("names runs of steps shortly")
    void numbers() {
        assertThat(StepWords.numbers(List.of(2))).isEqualTo("Step 3.");
        assertThat(StepWords.numbers(List.of(0, 1))).isEqualTo("Steps 1 and 2.");
        assertThat(StepWords.numbers(List.of(0, 3, 4, 5, 6, 8))).isEqualTo("Steps 1, 4 to 7 and 9.");
        assertThat(StepWords.numbers(List.of())).isEmpty();
    }
}
