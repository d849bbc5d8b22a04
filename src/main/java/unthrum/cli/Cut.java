package unthrum.cli;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import unthrum.cutting.CutRule;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.pieces.CutPlan;
import unthrum.pieces.CutPlanner;
import unthrum.pieces.Wishes;
import unthrum.report.CutText;

@Command(name = "cut", description = "Make pieces of a plan and lay them out on sheets and rolls.",
        customSynopsis = "unthrum cut FILE [--guillotine] [--drawings FOLDER] [--time TIME] [--json] [--width N] [--plain]",
        headerHeading = "Examples:%n  unthrum cut van.yaml%n  unthrum cut van.yaml --guillotine --drawings cuts%n%n")
final class Cut implements Runnable {

    private final Surroundings surroundings;

    @Parameters(paramLabel = "FILE", description = "A survey file.")
    private Path file;

    @Option(names = "--guillotine", description = "Only cuts from edge to edge, as with a long straight edge.")
    private boolean guillotine;

    @Option(names = "--seed", paramLabel = "N", description = "Of the search; the same gives the same layouts.")
    private long seed = 1;

    @Mixin
    private Look look = new Look();

    Cut(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        int width = look.width(surroundings);
        Wishes wishes = new Wishes(guillotine ? CutRule.GUILLOTINE : CutRule.FREE, Optional.empty(), seed,
                Optional.<Duration>empty(), p -> { }, () -> false);
        CutPlan plan = CutPlanner.plan(Surveys.plans(List.of(file)).get(0), Knowledge.load(), Catalogue.load(), wishes);
        surroundings.print(CutText.of(plan, width, look.style(surroundings)));
    }
}
