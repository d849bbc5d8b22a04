package unthrum.survey;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import com.networknt.schema.ValidationMessage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;
import unthrum.Scenarios;
import unthrum.reading.Problems;
import unthrum.reading.SchemaWriter;

@DisplayName("The published schema of the survey file")
class SurveySchemaTest {
    private static final Path PUBLISHED = Path.of("src/main/resources/unthrum/survey.schema.json");
    private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());
    private static final JsonSchema SCHEMA =
            JsonSchemaFactory.getInstance(VersionFlag.V202012).getSchema(SchemaWriter.of(Survey.class));
    private static final String DOOR = """
            survey: Small job
            vehicle: {body: van, drive: petrol, use: daily}
            aims: [road drumming]
            panels:
              - panel: door
                zone: door
                size: [800 mm, 600 mm]
            """;

    @Test
    @DisplayName("is what the records say today (refresh it with: mvn test -Dtest=SurveySchemaTest -Dschema.refresh)")
    void upToDate() throws IOException {
        String now = SchemaWriter.of(Survey.class);
        if (System.getProperty("schema.refresh") != null) {
            Files.writeString(PUBLISHED, now);
        }
        assertThat(PUBLISHED).as("refresh with: mvn test -Dtest=SurveySchemaTest -Dschema.refresh").hasContent(now);
    }

    @Test
    @DisplayName("is itself a valid schema of draft 2020-12")
    void valid() throws IOException {
        JsonSchema meta = JsonSchemaFactory.getInstance(VersionFlag.V202012)
                .getSchema(com.networknt.schema.SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(meta.validate(new ObjectMapper().readTree(SchemaWriter.of(Survey.class)))).isEmpty();
    }

    static Stream<Path> surveys() {
        return Stream.concat(Stream.of(Path.of("src/test/resources/unthrum/survey/workshop.yaml")),
                Scenarios.files().stream());
    }

    @ParameterizedTest(name = "{0}")
    @DisplayName("accepts every scenario, and so does the reader")
    @MethodSource("surveys")
    void scenarios(Path file) throws IOException {
        assertThat(SCHEMA.validate(YAML.readTree(file.toFile()))).isEmpty();
        assertThat(SurveyReader.read(file).panels()).isNotEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @DisplayName("agrees with the reader on what a panel may hold")
    @CsvFileSource(resources = "panel-keys.csv", delimiter = '|', numLinesToSkip = 1)
    void agrees(String key, String verdict) throws IOException {
        String yaml = DOOR + "    " + key + "\n";
        assertThat(accepts(YAML.readTree(yaml))).as("schema").isEqualTo(!verdict.equals("bad"));
        assertThat(read(yaml)).as("reader").isEqualTo(verdict.equals("good"));
    }

    @ParameterizedTest(name = "{0} becomes {1}")
    @DisplayName("agrees with the reader on the rest of the file")
    @CsvFileSource(resources = "vehicle-keys.csv", delimiter = '|', numLinesToSkip = 1)
    void agreesOnVehicle(String before, String after, String verdict) throws IOException {
        assertThat(DOOR).contains(before);
        String yaml = DOOR.replace(before, after == null ? "" : after);
        assertThat(accepts(YAML.readTree(yaml))).as("schema").isEqualTo(!verdict.equals("bad"));
        assertThat(read(yaml)).as("reader").isEqualTo(verdict.equals("good"));
    }

    private static boolean accepts(JsonNode survey) {
        Set<ValidationMessage> messages = SCHEMA.validate(survey);
        return messages.isEmpty();
    }

    private static boolean read(String yaml) {
        try {
            SurveyReader.read("van.yaml", new ByteArrayInputStream(yaml.getBytes(StandardCharsets.UTF_8)));
            return true;
        } catch (Problems e) {
            return false;
        }
    }
}
