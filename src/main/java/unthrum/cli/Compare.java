package unthrum.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
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
import unthrum.knowledge.RuleCard;
import unthrum.material.Catalogue;
import unthrum.plan.Planner;
import unthrum.reading.Nearest;
import unthrum.report.ComparisonJson;
import unthrum.report.ComparisonText;
import unthrum.report.JobsComparedText;
import unthrum.survey.Survey;

@Command(name = "compare", description = "Show what differs between two surveys, a survey and a finished job, or the"
        + " same surveys under other numbers, materials or rules.", customSynopsis = {
            "unthrum compare A B [--json] [--width N] [--plain]",
            "unthrum compare FILE-OR-FOLDER [--thresholds FILE] [--materials FILE] [--without RULE]... [--json]"
                    + " [--width N] [--plain]"},
        headerHeading = "Examples:%n  unthrum compare van.yaml van-built.yaml%n"
                    + "  unthrum compare jobs --thresholds my-thresholds.yaml%n%n")
final class Compare implements Runnable {

    private final Surroundings surroundings;

    @Parameters(index = "0", paramLabel = "A",
            description = "A survey, an as-built file, or a folder of surveys of past jobs.")
    private Path first;

    @Parameters(index = "1", paramLabel = "B", arity = "0..1", description = "A survey or an as-built file.")
    private Path second;

    @Option(names = "--thresholds", paramLabel = "FILE", description = "Numbers that replace those of the rule base.")
    private Path thresholds;

    @Option(names = "--materials", paramLabel = "FILE", description = "A catalogue in place of the usual one.")
    private Path materials;

    @Option(names = "--without", paramLabel = "RULE", description =
            "The rule base without this rule, by its id; may be given several times.")
    private List<String> without = List.of();

    @Option(names = "--json", description =
            "Print JSON, one document for each comparison (schema: unthrum schema comparison).")
    private boolean json;

    @Mixin
    private Look look = new Look();

    Compare(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        boolean others = thresholds != null || materials != null || !without.isEmpty();
        if (others == (second != null)) {
            throw new WrongUse("give a second file, or --thresholds, --materials or --without, and not both");
        }
        Knowledge knowledge = Knowledge.load();
        Catalogue catalogue = Catalogue.load();
        if (others) {
            underOthers(knowledge, catalogue);
        } else {
            print(Comparison.of(side(first, knowledge, catalogue), side(second, knowledge, catalogue)), catalogue);
        }
    }

    private void underOthers(Knowledge knowledge, Catalogue catalogue) {
        Planner usual = new Planner(knowledge, catalogue);
        Knowledge numbers = thresholds == null ? knowledge : knowledge.withThresholds(thresholds);
        Planner other = new Planner(without.isEmpty() ? numbers : without(numbers),
                materials == null ? catalogue : Catalogue.of(materials));
        List<Path> files = files();
        List<Survey> surveys = Surveys.read(files);
        List<Comparison> jobs = new ArrayList<>();
        for (int i = 0; i < files.size(); i++) {
            jobs.add(Comparison.of(Side.of(files.get(i).toString(), usual.plan(surveys.get(i))),
                    Side.of("the same under " + changed(), other.plan(surveys.get(i)))));
        }
        if (jobs.size() > 1 && !json) {
            surroundings.print(JobsComparedText.of(jobs, look.width(surroundings), look.style(surroundings)) + "\n");
        }
        jobs.forEach(job -> print(job, catalogue));
    }

    private Knowledge without(Knowledge knowledge) {
        List<String> ids = knowledge.cards().stream().map(RuleCard::id).toList();
        without.stream().filter(id -> !ids.contains(id)).findFirst().ifPresent(id -> {
            throw new WrongUse("no rule '" + id + "'" + (Nearest.remedy(id, ids).isEmpty() ? ""
                    : "; " + Nearest.remedy(id, ids)));
        });
        return knowledge.without(without);
    }

    /** What is other in the second plan. */
    private String changed() {
        List<String> changed = new ArrayList<>();
        if (thresholds != null) {
            changed.add("the other numbers");
        }
        if (materials != null) {
            changed.add("the other materials");
        }
        if (!without.isEmpty()) {
            changed.add("the rules without " + String.join(", ", without));
        }
        return String.join(" and ", changed);
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
            return Side.of(file.toString(), new Planner(knowledge, catalogue).plan(Surveys.read(List.of(file)).get(0)));
        }
        return Side.of(file.toString(), new Auditor(knowledge, catalogue)
                .audit(new JobReader(knowledge, catalogue, LocalDate.now()).read(file)), knowledge);
    }

    private static boolean isBuilt(Path file) {
        try (Stream<String> lines = Files.lines(file)) {
            return lines.anyMatch(line -> line.startsWith("of:"));
        } catch (IOException | UncheckedIOException e) {
            return false;
        }
    }

    private void print(Comparison comparison, Catalogue catalogue) {
        if (json) {
            surroundings.printUtf8(ComparisonJson.of(comparison, catalogue.currency()));
        } else {
            surroundings.print(ComparisonText.of(comparison, look.width(surroundings), look.style(surroundings))
                    + "\n");
        }
    }
}
