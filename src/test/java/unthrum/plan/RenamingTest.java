package unthrum.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import unthrum.Scenarios;
import unthrum.material.Catalogue;
import unthrum.reading.YamlReader;
import unthrum.survey.Survey;

@DisplayName("What a shop calls its materials moves no plan")
class RenamingTest {

    private static String materials;

    @TempDir
    private Path folder;

    @BeforeAll
    static void read() throws IOException {
        try (InputStream in = Catalogue.class.getClassLoader().getResourceAsStream("unthrum/rules/materials.yaml")) {
            materials = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static String name(String material) {
        return Integer.toHexString(material.hashCode() * 31 + 7) + "-" + material;
    }

    /** What each panel gets and how much of it, by the names of the shipped catalogue; the shopping and the worth. */
    private static Map<String, String> told(Plan plan, UnaryOperator<String> original) {
        Map<String, String> told = new TreeMap<>();
        plan.panels().forEach(p -> told.put(p.name(), p.layup().layers().stream().map(l -> original.apply(
                l.material().material()) + l.patches()).toList() + " without " + p.leftOut().stream()
                        .map(l -> original.apply(l.material().material()) + l.patch() + l.why()).sorted().toList()));
        told.put(" shopping", plan.shopping().stream().map(p -> original.apply(p.material().material()) + p.packs())
                .sorted().collect(Collectors.joining(", ")));
        told.put(" proof", plan.shares().proof().toString());
        return told;
    }

    private static Survey survey(String scenario, UnaryOperator<String> change) throws IOException {
        String text = change.apply(Files.readString(Path.of("scenarios", scenario + ".yaml")));
        return YamlReader.read(scenario, new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), Survey.class);
    }

    /** The entries of a list in YAML in another order. */
    private static String shuffled(String yaml, String list, String entry, Random order) {
        int from = yaml.indexOf(list) + list.length();
        List<String> entries = new ArrayList<>(List.of(yaml.substring(from).split("(?m)^(?=" + entry + ")")));
        String head = yaml.substring(0, from) + entries.remove(0);
        Collections.shuffle(entries, order);
        return head + String.join("", entries.stream().map(e -> e.endsWith("\n") ? e : e + "\n").toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"one-pack-hatchback", "sleeper-city-van", "country-bus", "shell-pickup",
        "travelling-bicycle-workshop"})
    @DisplayName("nor in which order its catalogue lists them")
    void renamed(String scenario) throws IOException {
        String other = shuffled(materials.replaceAll("(?m)^(  - material: )(\\S+)", "$1@$2"), "materials:\n",
                "  - material: ", new Random(7));
        for (String name : Scenarios.CATALOGUE.all().stream().map(m -> m.material()).toList()) {
            other = other.replace("@" + name + "\n", name(name) + "\n");
        }
        Path file = Files.writeString(folder.resolve("materials.yaml"), other);
        Catalogue catalogue = Catalogue.of(file);
        assertThat(catalogue.all()).hasSameSizeAs(Scenarios.CATALOGUE.all())
                .noneMatch(m -> Scenarios.CATALOGUE.find(m.material()).isPresent());
        Plan renamed = new Planner(Scenarios.KNOWLEDGE, catalogue).plan(survey(scenario,
                text -> text.replaceAll("\\{material: ([^,]+),", "{material: @$1,").transform(RenamingTest::inStock)));
        assertThat(told(renamed, n -> n.substring(n.indexOf('-') + 1)))
                .isEqualTo(told(Scenarios.plan(scenario), n -> n));
    }

    private static String inStock(String text) {
        String renamed = text;
        for (String name : Scenarios.CATALOGUE.all().stream().map(m -> m.material()).toList()) {
            renamed = renamed.replace("@" + name + ",", name(name) + ",");
        }
        return renamed;
    }

    @ParameterizedTest
    @ValueSource(strings = {"one-pack-hatchback", "sleeper-city-van"})
    @DisplayName("nor in which order the survey lists the panels")
    void reordered(String scenario) throws IOException {
        Plan reordered = Scenarios.PLANNER.plan(survey(scenario,
                text -> shuffled(text, "panels:\n", "  - panel: ", new Random(3))));
        assertThat(told(reordered, n -> n)).isEqualTo(told(Scenarios.plan(scenario), n -> n));
    }
}
