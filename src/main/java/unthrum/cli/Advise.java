package unthrum.cli;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import unthrum.plan.Plan;
import unthrum.report.PlanJson;
import unthrum.report.PlanText;

@Command(name = "advise", description = "Plan the treatment of every panel in a survey.",
        customSynopsis = "unthrum advise FILE... [--panel NAME]... [--json] [--width N] [--plain]",
        headerHeading = "Examples:%n  unthrum advise van.yaml%n  unthrum advise van.yaml --panel roof-middle --width 120%n%n")
final class Advise implements Runnable {

    private final Surroundings surroundings;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "Survey files.")
    private List<Path> files;

    @Option(names = "--panel", paramLabel = "NAME", description = "Show this panel only; may be given several times.")
    private List<String> panels = List.of();

    @Option(names = "--json", description = "Print JSON, one document for each file (schema: unthrum schema plan).")
    private boolean json;

    @Mixin
    private Look look = new Look();

    Advise(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        int width = look.width(surroundings);
        List<Plan> plans = Surveys.plans(files);
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
}
