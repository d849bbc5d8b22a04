package unthrum.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import unthrum.audit.Auditor;
import unthrum.built.JobReader;
import unthrum.compare.Comparison;
import unthrum.compare.Side;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.plan.Planner;
import unthrum.report.ComparisonText;
import unthrum.survey.SurveyReader;
import unthrum.survey.Survey;

@Command(name = "compare", description = "Show what differs between two surveys, a survey and a finished job, or the"
        + " same surveys under other numbers or materials.", customSynopsis = {
            "unthrum compare A B [--width N] [--plain]",
            "unthrum compare FILE-OR-FOLDER [--thresholds FILE] [--materials FILE] [--width N] [--plain]"},
        headerHeading = "Examples:%n  unthrum compare van.yaml van-built.yaml%n  unthrum compare jobs --thresholds my-thresholds.yaml%n%n")
final class Compare implements Runnable {

    private final Surroundings surroundings;

    @Parameters(index = "0", paramLabel = "A", description = "A survey, an as-built file, or a folder of surveys.")
    private Path first;

    @Parameters(index = "1", paramLabel = "B", arity = "0..1", description = "A survey or an as-built file.")
    private Path second;

    @Option(names = "--thresholds", paramLabel = "FILE", description = "Numbers that replace those of the rule base.")
    private Path thresholds;

    @Option(names = "--materials", paramLabel = "FILE", description = "A catalogue in place of the usual one.")
    private Path materials;

    @Mixin
    private Look look = new Look();

    Compare(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        boolean otherNumbers = thresholds != null || materials != null;
        if (otherNumbers == (second != null)) {
            throw new WrongUse("give a second file, or --thresholds or --materials, and not both");
        }
        Knowledge knowledge = Knowledge.load();
        Catalogue catalogue = Catalogue.load();
        if (otherNumbers) {
            underOthers(knowledge, catalogue);
        } else {
            print(Comparison.of(side(first, knowledge, catalogue), side(second, knowledge, catalogue)));
        }
    }

    private void underOthers(Knowledge knowledge, Catalogue catalogue) {
        Planner usual = new Planner(knowledge, catalogue);
        Planner other = new Planner(thresholds == null ? knowledge : knowledge.withThresholds(thresholds),
                materials == null ? catalogue : Catalogue.of(materials));
        List<Path> files = files();
        List<Survey> surveys = Surveys.read(files);
        for (int i = 0; i < files.size(); i++) {
            print(Comparison.of(Side.of(files.get(i).toString(), usual.plan(surveys.get(i))),
                    Side.of("the same under the other numbers", other.plan(surveys.get(i)))));
        }
    }

    private List<Path> files() {
        if (!Files.isDirectory(first)) {
            return List.of(first);
        }
        try (Stream<Path> files = Files.list(first)) {
            List<Path> surveys = files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
            if (surveys.isEmpty()) {
                throw new WrongUse("no .yaml file in " + first);
            }
            return surveys;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** An as-built file says of which survey it is; a survey does not. */
    private static Side side(Path file, Knowledge knowledge, Catalogue catalogue) {
        if (!isBuilt(file)) {
            return Side.of(file.toString(), new Planner(knowledge, catalogue).plan(SurveyReader.read(file)));
        }
        return Side.of(file.toString(), new Auditor(knowledge, catalogue)
                .audit(new JobReader(knowledge, catalogue, LocalDate.now()).read(file)));
    }

    private static boolean isBuilt(Path file) {
        try (Stream<String> lines = Files.lines(file)) {
            return lines.anyMatch(line -> line.startsWith("of:"));
        } catch (IOException | UncheckedIOException e) {
            return false;
        }
    }

    private void print(Comparison comparison) {
        surroundings.print(ComparisonText.of(comparison, look.width(surroundings), look.style(surroundings)) + "\n");
    }
}
