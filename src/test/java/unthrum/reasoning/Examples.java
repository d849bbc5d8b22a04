package unthrum.reasoning;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import unthrum.material.Layer;
import unthrum.reading.YamlReader;
import unthrum.survey.Survey;

/** Reads the example files beside the rules: for each rule the panels on which it must speak or must stay silent. */
public final class Examples {

    private static final YAMLMapper YAML = new YAMLMapper();
    private static final String DEFAULTS = """
            survey: example
            vehicle: {body: van, drive: diesel, use: daily}
            aims: [road drumming]
            """;

    /** One panel of an example file. Where it names layers ('of'), the rule speaks of each of them, or of none of them. */
    public record Trial(String file, String rule, String says, boolean speaks, Set<Layer> of, Survey survey) {
        @Override
        public String toString() {
            return rule + (speaks ? " speaks: " : " is silent: ") + says;
        }
    }

    private Examples() {
    }

    public static List<Trial> all() {
        List<Trial> trials = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("rules", "examples"))) {
            for (Path file : files.sorted().toList()) {
                for (JsonNode example : YAML.readTree(file.toFile()).get("examples")) {
                    add(trials, file, example, "speaks", true);
                    add(trials, file, example, "silent", false);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return trials;
    }

    private static void add(List<Trial> trials, Path file, JsonNode example, String key, boolean speaks)
            throws JsonProcessingException {
        for (JsonNode trial : example.path(key)) {
            String rule = example.get("rule").asText();
            trials.add(new Trial(file.getFileName().toString(), rule, trial.get("says").asText(), speaks,
                    layers(trial.path("of")), survey(rule, trial)));
        }
    }

    private static Set<Layer> layers(JsonNode words) {
        Set<Layer> layers = EnumSet.noneOf(Layer.class);
        words.forEach(word -> layers.add(Stream.of(Layer.values()).filter(l -> l.word().equals(word.asText()))
                .findFirst().orElseThrow(() -> new IllegalArgumentException("no layer " + word))));
        return layers;
    }

    private static Survey survey(String rule, JsonNode trial) throws JsonProcessingException {
        ObjectNode survey = (ObjectNode) YAML.readTree(DEFAULTS);
        if (trial.has("vehicle")) {
            ((ObjectNode) survey.get("vehicle")).setAll((ObjectNode) trial.get("vehicle"));
        }
        if (trial.has("aims")) {
            survey.set("aims", trial.get("aims"));
        }
        ObjectNode panel = YAML.createObjectNode().put("panel", "panel");
        panel.setAll((ObjectNode) trial.get("panel"));
        survey.putArray("panels").add(panel);
        byte[] text = YAML.writeValueAsString(survey).getBytes(StandardCharsets.UTF_8);
        return YamlReader.read(rule + ", " + trial.get("says").asText(), new ByteArrayInputStream(text), Survey.class);
    }
}
