package unthrum.cli;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.plan.Plan;
import unthrum.reasoning.change.Doubt;
import unthrum.reasoning.change.PanelTrial;
import unthrum.reasoning.engine.RuleEngine;
import unthrum.report.ChangesJson;
import unthrum.report.DoubtText;
import unthrum.report.PlanJson;
import unthrum.report.PlanText;
import unthrum.survey.PanelEntry;
import unthrum.survey.Survey;

@Command(name = "advise", description = "Plan the treatment of every panel in a survey.",
        customSynopsis = "unthrum advise FILE... [--panel NAME]... [--doubtful] [--time TIME] [--json] [--width N] [--plain]",
        headerHeading = "Examples:%n  unthrum advise van.yaml%n"
                + "  unthrum advise van.yaml --panel roof-middle --width 120%n%n")
final class Advise implements Runnable {

    private final Surroundings surroundings;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "Survey files.")
    private List<Path> files;

    @Option(names = "--panel", paramLabel = "NAME", description = "Show this panel only; may be given several times.")
    private List<String> panels = List.of();

    @Option(names = "--doubtful", description = "Show the panels that are worth an older hand's look, and why.")
    private boolean doubtful;

    @Option(names = "--time", paramLabel = "TIME",
            description = "Share what is scarce for so long, such as '30 s'; else as long as it usually takes.")
    private String time;

    @Option(names = "--json", description = "Print JSON, one document for each file (schema: unthrum schema plan,"
            + " or doubts with --doubtful).")
    private boolean json;

    @Mixin
    private Look look = new Look();

    Advise(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        int width = look.width(surroundings);
        if (doubtful) {
            Surveys.read(files).forEach(survey -> doubts(survey, width));
            return;
        }
        Optional<Duration> longest = Given.time(time);
        try (Interruption interruption = new Interruption()) {
            List<Plan> plans;
            try (SearchProgress progress = new SearchProgress(surroundings)) {
                plans = Surveys.plans(files, progress.sharing(longest, interruption));
            }
            print(plans, width);
        }
    }

    private void print(List<Plan> plans, int width) {
        plans.forEach(plan -> panels.forEach(name -> Surveys.panel(plan, name)));
        String between = "";
        for (Plan plan : plans) {
            if (json) {
                surroundings.printUtf8(PlanJson.of(plan, panels));
            } else {
                surroundings.print(between + PlanText.of(plan, panels, width, look.style(surroundings)));
                between = "\n";
            }
        }
    }

    private void doubts(Survey survey, int width) {
        try (PanelTrial trial = new PanelTrial(new RuleEngine(Knowledge.load()), Catalogue.load(), survey)) {
            List<PanelEntry> shown = panels.isEmpty() ? survey.panels()
                    : panels.stream().map(name -> Surveys.entry(survey, name)).toList();
            List<Doubt> doubts = Doubt.of(trial, shown);
            if (json) {
                surroundings.printUtf8(ChangesJson.ofDoubts(survey.survey(), doubts));
            } else {
                surroundings.print(DoubtText.of(survey.survey(), doubts, width, look.style(surroundings)));
            }
        }
    }
}
