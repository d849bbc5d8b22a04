package unthrum.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
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
import unthrum.plan.Plan;
import unthrum.report.CutDrawings;
import unthrum.report.CutJson;
import unthrum.report.CutText;

@Command(name = "cut", description = "Make pieces of a plan and lay them out on sheets and rolls.",
        customSynopsis = "unthrum cut FILE [--guillotine] [--gap LENGTH] [--drawings FOLDER] [--time TIME] [--seed N]"
                + " [--json] [--width N] [--plain]",
        headerHeading = "Examples:%n  unthrum cut van.yaml%n  unthrum cut van.yaml --guillotine --drawings cuts%n%n")
final class Cut implements Callable<Integer> {

    private static final double WIDEST_GAP = 0.05;

    private final Surroundings surroundings;

    @Parameters(paramLabel = "FILE", description = "A survey file.")
    private Path file;

    @Option(names = "--guillotine", description = "Only cuts from edge to edge, as with a long straight edge.")
    private boolean guillotine;

    @Option(names = "--gap", paramLabel = "LENGTH",
            description = "Gap between pieces that the tool takes, such as '2 mm'; else 0 mm by knife, 3 mm by saw.")
    private String gap;

    @Option(names = "--drawings", paramLabel = "FOLDER",
            description = "Write a drawing of every sheet in true scale (SVG); older ones of that name are replaced.")
    private Path drawings;

    @Option(names = "--time", paramLabel = "TIME",
            description = "Look for so long, such as '30 s', instead of a fixed number of steps.")
    private String time;

    @Option(names = "--seed", paramLabel = "N",
            description = "Of the search; without --time the same seed gives the same layouts everywhere.")
    private long seed = 1;

    @Option(names = "--json", description = "Print JSON (schema: unthrum schema cut).")
    private boolean json;

    @Mixin
    private Look look = new Look();

    Cut(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws IOException {
        int width = look.width(surroundings);
        Optional<Double> asked = Given.length("--gap", gap, WIDEST_GAP);
        Optional<Duration> longest = Given.time(time);
        try (Interruption interruption = new Interruption()) {
            CutPlan cuts;
            try (SearchProgress progress = new SearchProgress(surroundings)) {
                Plan plan = Surveys.plans(List.of(file), progress.sharing(Optional.empty(), interruption)).get(0);
                cuts = CutPlanner.plan(plan, Knowledge.load(), Catalogue.load(), new Wishes(
                        guillotine ? CutRule.GUILLOTINE : CutRule.FREE, asked, seed, longest, progress, interruption));
            }
            if (drawings != null) {
                write(CutDrawings.of(cuts));
            }
            print(cuts, width);
        }
        return ExitCode.DONE.code();
    }

    private void print(CutPlan cuts, int width) {
        if (json) {
            surroundings.printUtf8(CutJson.of(cuts));
        } else {
            surroundings.print(CutText.of(cuts, width, look.style(surroundings)));
        }
    }

    private void write(Map<String, String> sheets) throws IOException {
        if (Files.exists(drawings) && !Files.isDirectory(drawings)) {
            throw new WrongUse("cannot write drawings into " + drawings + ": it is no folder");
        }
        Map<Path, String> files = new LinkedHashMap<>();
        for (Map.Entry<String, String> sheet : sheets.entrySet()) {
            Path target = drawings.resolve(sheet.getKey());
            if (Files.exists(target) && Files.isSameFile(target, file)) {
                throw new WrongUse("the drawing " + target + " would overwrite the survey; nothing was written");
            }
            files.put(target, sheet.getValue());
        }
        Files.createDirectories(drawings);
        Written.all(files);
        surroundings.err().println("Wrote " + files.size() + " drawings into " + drawings + ".");
    }
}
