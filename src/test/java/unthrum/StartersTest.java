package unthrum;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import unthrum.reading.Words;
import unthrum.reading.YamlReader;
import unthrum.survey.Body;
import unthrum.survey.PanelEntry;
import unthrum.survey.Survey;

@DisplayName("The starter surveys")
class StartersTest {
    private static final List<Path> STARTERS = files();

    private static List<Path> files() {
        try (Stream<Path> files = Files.list(Path.of("src/main/resources/unthrum/starters"))) {
            return files.sorted().toList();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static Survey read(Path file) {
        return YamlReader.read(file, Survey.class);
    }

    @Test
    @DisplayName("lie ready for van, hatchback, saloon, pick-up, off-roader and bus, each under its body's name")
    void bodies() {
        assertThat(STARTERS).extracting(file -> read(file).vehicle().body())
                .containsExactlyInAnyOrderElementsOf(EnumSet.of(
                        Body.VAN, Body.HATCHBACK, Body.SALOON, Body.PICK_UP, Body.OFF_ROADER, Body.BUS));
        assertThat(STARTERS).allSatisfy(file -> assertThat(file.getFileName())
                .hasToString(read(file).vehicle().body() + ".yaml"));
    }

    @ParameterizedTest
    @FieldSource("STARTERS")
    @DisplayName("have 10 to 24 panels, each with a name of its own")
    void panels(Path file) {
        assertThat(read(file).panels()).hasSizeBetween(10, 24)
                .extracting(PanelEntry::panel).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @FieldSource("STARTERS")
    @DisplayName("state the name, zone and usual size of a panel and leave every other fact open")
    void open(Path file) {
        assertThat(read(file).panels()).allSatisfy(panel -> assertThat(stated(panel))
                .containsExactly("panel", "zone", "size"));
    }

    private static List<String> stated(PanelEntry panel) throws ReflectiveOperationException {
        List<String> keys = new ArrayList<>();
        for (RecordComponent component : PanelEntry.class.getRecordComponents()) {
            if (!component.getAccessor().invoke(panel).equals(Optional.empty())) {
                keys.add(Words.key(component.getName()));
            }
        }
        return keys;
    }

    @ParameterizedTest
    @FieldSource("STARTERS")
    @DisplayName("say beside every open fact how to find it out, once for each zone")
    void hints(Path file) throws IOException {
        Set<String> explained = Stream.of(Files.readString(file).split("\n  - panel: ")).skip(1)
                .filter(block -> block.lines().filter(line -> line.contains(": unknown"))
                        .allMatch(line -> line.matches(" +[a-z ]+: unknown +# \\S.*")))
                .map(block -> block.lines().filter(line -> line.startsWith("    zone: ")).findFirst().orElseThrow())
                .map(line -> line.substring("    zone: ".length()))
                .collect(Collectors.toSet());
        assertThat(explained).isEqualTo(read(file).panels().stream().map(PanelEntry::zone).map(Words::of)
                .collect(Collectors.toSet()));
    }
}
