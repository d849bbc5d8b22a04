package unthrum.cli;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.material.Layer;
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;
import unthrum.plan.Planner;
import unthrum.report.CaseJson;
import unthrum.report.CaseText;
import unthrum.survey.Survey;

@Command(name = "why", description = "The whole case for and against treating one panel.",
        customSynopsis = "unthrum why FILE PANEL [LAYER] [--teach] [--json] [--width N] [--plain]",
        headerHeading = "Examples:%n  unthrum why van.yaml roof-middle%n  unthrum why van.yaml roof-middle damping --teach%n%n")
final class Why implements Runnable {

    private final Surroundings surroundings;

    @Parameters(index = "0", paramLabel = "FILE", description = "A survey file.")
    private Path file;

    @Parameters(index = "1", paramLabel = "PANEL", description = "A panel's name.")
    private String panel;

    @Parameters(index = "2", paramLabel = "LAYER", arity = "0..1",
            description = "Only what concerns this layer, such as damping or 'wear face'.")
    private String layer;

    @Option(names = "--teach", description = "Say also why each rule holds, for an apprentice.")
    private boolean teach;

    @Option(names = "--json", description = "Print the whole case as JSON (schema: unthrum schema case).")
    private boolean json;

    @Mixin
    private Look look = new Look();

    Why(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        int width = look.width(surroundings);
        Optional<Layer> only = Optional.ofNullable(layer).map(Why::layer);
        Survey survey = Surveys.read(List.of(file)).get(0);
        Knowledge knowledge = Knowledge.load();
        Plan plan = new Planner(knowledge, Catalogue.load()).plan(survey);
        PlannedPanel planned = Surveys.panel(plan, panel);
        if (json) {
            surroundings.printUtf8(CaseJson.of(planned, knowledge));
        } else {
            surroundings.print(CaseText.of(planned, only, teach, knowledge, width, look.style(surroundings)));
        }
    }

    private static Layer layer(String word) {
        List<Layer> layers = Arrays.stream(Layer.values()).filter(l -> l != Layer.ANY).toList();
        return layers.stream().filter(l -> l.word().equals(word.replace('-', ' '))).findFirst()
                .orElseThrow(() -> new WrongUse("no layer '" + word + "'; there are: "
                        + layers.stream().map(Layer::word).collect(Collectors.joining(", "))));
    }
}
