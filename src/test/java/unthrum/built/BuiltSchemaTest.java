package unthrum.built;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import unthrum.reading.SchemaWriter;

@DisplayName("The published schema of the as-built file")
class BuiltSchemaTest {
    private static final Path PUBLISHED = Path.of("src/main/resources/unthrum/built.schema.json");

    @Test
    @DisplayName("is what the records say today (refresh it with: mvn test -Dtest=BuiltSchemaTest -Dschema.refresh)")
    void upToDate() throws IOException {
        String now = SchemaWriter.of(Built.class);
        if (System.getProperty("schema.refresh") != null) {
            Files.writeString(PUBLISHED, now);
        }
        assertThat(PUBLISHED).as("refresh with: mvn test -Dtest=BuiltSchemaTest -Dschema.refresh").hasContent(now);
    }

    @Test
    @DisplayName("accepts every finished scenario")
    void scenarios() throws IOException {
        var schema = JsonSchemaFactory.getInstance(VersionFlag.V202012).getSchema(SchemaWriter.of(Built.class));
        ObjectMapper yaml = new ObjectMapper(new YAMLFactory());
        try (Stream<Path> files = Files.list(Path.of("scenarios", "finished"))) {
            assertThat(files.filter(f -> f.toString().endsWith(".yaml")).toList()).isNotEmpty()
                    .allSatisfy(f -> assertThat(schema.validate(yaml.readTree(f.toFile()))).isEmpty());
        }
    }
}
