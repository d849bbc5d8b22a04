package unthrum.cli;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.change.PanelTrial;
import unthrum.reasoning.change.Unknown;
import unthrum.reasoning.change.Unknowns;
import unthrum.reasoning.engine.RuleEngine;
import unthrum.report.AskText;
import unthrum.report.ChangesJson;
import unthrum.survey.PanelEntry;
import unthrum.survey.Survey;

@Command(name = "ask", description = "What to measure next: the unknown facts that decide something, the weightiest first.",
        customSynopsis = "unthrum ask FILE [--panel NAME] [--json] [--width N] [--plain]",
        headerHeading = "Examples:%n  unthrum ask van.yaml%n  unthrum ask van.yaml --panel roof-middle%n%n")
final class Ask implements Runnable {

    private final Surroundings surroundings;

    @Parameters(paramLabel = "FILE", description = "A survey file.")
    private Path file;

    @Option(names = "--panel", paramLabel = "NAME", description = "Ask about this panel only.")
    private String panel;

    @Option(names = "--json", description = "Print JSON (schema: unthrum schema questions).")
    private boolean json;

    @Mixin
    private Look look = new Look();

    Ask(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        int width = look.width(surroundings);
        Survey survey = Surveys.read(List.of(file)).get(0);
        String currency = Catalogue.load().currency();
        RuleEngine engine = new RuleEngine(Knowledge.load());
        try (PanelTrial trial = new PanelTrial(engine, Catalogue.load(), survey)) {
            List<PanelEntry> asked = panel == null ? survey.panels() : List.of(Surveys.entry(survey, panel));
            Unknowns unknowns = new Unknowns(trial);
            List<Unknown> found = panel == null ? unknowns.of(survey) : unknowns.of(asked.get(0));
            List<PanelAdvice> slight = asked.stream().map(trial::advise).filter(a -> a.slight().isPresent()).toList();
            if (json) {
                surroundings.printUtf8(ChangesJson.of(survey.survey(), found, slight, currency));
            } else {
                surroundings.print(AskText.of(survey.survey(), found, slight, currency, width,
                        look.style(surroundings)));
            }
        }
    }
}
