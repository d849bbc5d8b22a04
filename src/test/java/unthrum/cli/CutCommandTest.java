package unthrum.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The command cut")
class CutCommandTest {

    private static final String SMALL = """
            survey: Two panels
            vehicle: {body: van, drive: petrol, use: daily, payload left: 300 kg}
            aims: [road drumming]
            stock: [{material: butyl-2, sheets: 12}]
            panels:
              - panel: side-left
                zone: side
                skin: {metal: steel, gauge: 0.7 mm}
                size: [900 mm, 600 mm]
                shape: flat
                ribs: none
                tap: rings
                clearance: 20 mm
                clearance to: trim
                heat: none
                reach: open
                openings: [{kind: vent, size: 80 mm, state: open, at: [450 mm, 300 mm]}]
                fixings: none
                behind: none
                wet: dry
                surface: {paint: sound, dirt: dust, rust: none, old: none}
                near ear: true
                near noise: road
            """;

    @TempDir
    private Path folder;

    private record Ended(int code, String out, String err) {
    }

    private static Ended run(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Main.run(new Surroundings(new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8), Map.of(), false, StandardCharsets.UTF_8), arguments);
        return new Ended(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private String survey() throws IOException {
        return Files.writeString(folder.resolve("van.yaml"), SMALL).toString();
    }

    @Test
    @DisplayName("prints pieces, each sheet in a sketch, and the shopping, within 80 columns")
    void text() throws IOException {
        Ended ended = run("cut", survey());
        assertThat(ended.code()).isZero();
        assertThat(ended.err()).isEmpty();
        assertThat(ended.out()).containsSubsequence("Cutting: Two panels", "Pieces", "side-left", "Cut-outs",
                "Round 90 mm for vent 1", "Sheet by sheet", "+--", "Shopping by layout", "from the shelf");
        assertThat(ended.out().lines()).allMatch(l -> l.length() <= 80);
    }

    @Test
    @DisplayName("prints the same for the same seed, and JSON by its schema")
    void json() throws IOException {
        String survey = survey();
        Ended ended = run("cut", survey, "--seed", "5", "--guillotine", "--json");
        assertThat(run("cut", survey, "--seed", "5", "--guillotine", "--json").out()).isEqualTo(ended.out());
        JsonNode json = new ObjectMapper().readTree(ended.out());
        assertThat(JsonSchemaFactory.getInstance(VersionFlag.V202012).getSchema(run("schema", "cut").out())
                .validate(json)).isEmpty();
        assertThat(json.get("guillotine").asBoolean()).isTrue();
        assertThat(json.at("/materials/0/pieces/0/place/panel").asText()).isEqualTo("side-left");
    }

    @Test
    @DisplayName("writes a drawing for every sheet into a new folder, leaves no half files, and replaces its own")
    void drawings() throws IOException {
        String survey = survey();
        Path target = folder.resolve("cuts");
        Ended ended = run("cut", survey, "--drawings", target.toString());
        assertThat(ended.code()).isZero();
        List<String> files = files(target);
        assertThat(files).isNotEmpty().allMatch(f -> f.endsWith(".svg"));
        assertThat(ended.err()).contains("Wrote " + files.size() + " drawings into " + target);
        assertThat(run("cut", survey, "--drawings", target.toString()).code()).isZero();
        assertThat(files(target)).isEqualTo(files);
    }

    private static List<String> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    @DisplayName("never writes over the survey, nor into what is no folder")
    void inputs() throws IOException {
        String first = files(drawn()).get(0);
        Path survey = Files.writeString(folder.resolve(first), SMALL);
        Ended over = run("cut", survey.toString(), "--drawings", folder.toString());
        assertThat(over.code()).isEqualTo(2);
        assertThat(over.err()).contains("would overwrite the survey; nothing was written");
        assertThat(survey).hasContent(SMALL);
        Ended noFolder = run("cut", survey.toString(), "--drawings", survey.toString());
        assertThat(noFolder.code()).isEqualTo(2);
        assertThat(noFolder.err()).contains("it is no folder");
        assertThat(survey).hasContent(SMALL);
    }

    private Path drawn() throws IOException {
        Path target = folder.resolve("drawn");
        run("cut", survey(), "--drawings", target.toString());
        return target;
    }

    @Test
    @DisplayName("looks for as long as it is told, and says what it wants otherwise")
    void time() throws IOException {
        assertThat(run("cut", survey(), "--time", "1 s").code()).isZero();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "--time | 30 | --time '30': give a time such as",
        "--time | 3 mm | --time '3 mm': give a time such as",
        "--gap | 2 | --gap '2': give a length from 0 mm to 50 mm",
        "--gap | 1 m | --gap '1 m': give a length from 0 mm to 50 mm"})
    @DisplayName("refuses a time or a gap without its unit or out of range, and ends with 2")
    void wrong(String option, String value, String message) throws IOException {
        Ended ended = run("cut", survey(), option, value);
        assertThat(ended.code()).isEqualTo(2);
        assertThat(ended.out()).isEmpty();
        assertThat(ended.err()).contains(message);
    }
}
