package unthrum.reading;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import java.io.IOException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A schema written from a record")
class SchemaWriterTest {
    private static final JsonSchema SCHEMA =
            JsonSchemaFactory.getInstance(VersionFlag.V202012).getSchema(SchemaWriter.of(Shelf.class));

    @ParameterizedTest(name = "{0} is {1}")
    @DisplayName("agrees with the reader")
    @CsvSource(delimiter = '|', value = {
        "slope: -0.25|good", "slope: steep|bad", "checked: 2026-01-31|good", "checked: yesterday|bad",
        "loss factor: 0.3|good", "loss factor: 0.3 mm|bad", "anything: 4 kg/m2|good", "anything: 0.5|good",
        "anything: 4 cubits|bad", "louder: -3 dB|good", "warmest: -3 degC|bad", "weights: {top: 2 kg}|good",
        "weights: {top: 2 mm}|bad", "weights: [2 kg]|bad", "weights: none|bad", "notes: {a: text, b: 3}|good",
        "notes: {a: [text]}|bad", "colours: red|good", "colours: [red, blue, red]|good", "colours: none|bad",
        "colours: [red, blue, red, red]|bad", "colours: []|bad", "goods: foam|good", "goods: none|good",
        "goods: {pieces: 2}|bad", "place: red|bad", "place: {wall: red, room: attic}|good",
        "price: 12.50 EUR|good", "price: 12.50|bad", "price: -3 EUR|bad", "locked: no|good", "boards: 10|bad"})
    void agrees(String line, String verdict) throws IOException {
        String yaml = "shelf: left\n" + line + "\n";
        assertThat(SCHEMA.validate(new ObjectMapper(new YAMLFactory()).readTree(yaml)).isEmpty())
                .as("schema").isEqualTo(verdict.equals("good"));
        assertThat(Texts.problems(yaml).equals("no problem")).as("reader").isEqualTo(verdict.equals("good"));
    }

    @Test
    @DisplayName("says what a key means and which units and range it wants")
    void descriptions() {
        assertThat(SchemaWriter.of(Shelf.class)).contains("\"description\" : \"A name for the shelf\"")
                .contains("\"description\" : \"A length in mm, cm, m, in or ft, from 100 mm to 2 m\"");
    }
}
