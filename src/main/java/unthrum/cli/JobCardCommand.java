package unthrum.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import unthrum.job.JobCard;
import unthrum.job.JobPlanner;
import unthrum.job.StepTable;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.pieces.CutPlan;
import unthrum.pieces.CutPlanner;
import unthrum.pieces.Wishes;
import unthrum.plan.Plan;
import unthrum.plan.Planner;
import unthrum.report.AsBuiltStarter;
import unthrum.report.JobCardJson;
import unthrum.report.JobCardPage;
import unthrum.report.JobCardText;
import unthrum.report.JobSheet;
import unthrum.survey.Survey;

@Command(name = "jobcard", description = "Put the whole job into steps, in the order of work, to be ticked off.",
        customSynopsis = "unthrum jobcard FILE [--page FILE] [--as-built FILE] [--steps FILE] [--json] [--width N] "
                + "[--plain]",
        headerHeading = "Examples:%n  unthrum jobcard van.yaml%n  unthrum jobcard van.yaml --page card.html --as-built "
                + "van-built.yaml%n%n")
final class JobCardCommand implements Callable<Integer> {

    private final Surroundings surroundings;

    @Parameters(paramLabel = "FILE", description = "A survey file.")
    private Path file;

    @Option(names = "--page", paramLabel = "FILE", description = "Write a page for printing; an older one is replaced.")
    private Path page;

    @Option(names = "--as-built", paramLabel = "FILE",
            description = "Start the as-built file, which must not be there yet, with all of the plan in it, everything open.")
    private Path asBuilt;

    @Option(names = "--steps", paramLabel = "FILE",
            description = "Take the shop's own steps and order of work, a file like rules/steps.yaml.")
    private Path steps;

    @Option(names = "--json", description = "Print JSON (schema: unthrum schema jobcard).")
    private boolean json;

    @Mixin
    private Look look = new Look();

    JobCardCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws IOException {
        int width = look.width(surroundings);
        checkTargets();
        Knowledge knowledge = Knowledge.load();
        Survey survey = Surveys.read(List.of(file)).get(0);
        StepTable table = steps == null ? StepTable.load(knowledge) : StepTable.read(steps, knowledge);
        Plan plan = new Planner(knowledge, Catalogue.load()).plan(survey);
        JobCard card = new JobPlanner(knowledge, table).card(plan);
        CutPlan cuts = cuts(plan, knowledge);
        JobSheet sheet = JobSheet.of(card, cuts, knowledge);
        write(card, cuts, sheet);
        if (json) {
            surroundings.printUtf8(JobCardJson.of(card, cuts));
        } else if (page == null && asBuilt == null) {
            surroundings.print(JobCardText.of(sheet, width, look.style(surroundings)));
        }
        return ExitCode.DONE.code();
    }

    /** The layouts that 'cut' gives without further wishes. */
    private CutPlan cuts(Plan plan, Knowledge knowledge) {
        try (Interruption interruption = new Interruption(); SearchProgress progress = new SearchProgress(surroundings)) {
            return CutPlanner.plan(plan, knowledge, Catalogue.load(), Wishes.usual().heard(progress, interruption));
        }
    }

    /** Found out before anything is written. */
    private void checkTargets() {
        if (asBuilt != null) {
            Written.checkAbsent(asBuilt);
        }
        if (page != null) {
            Written.checkReplaceable(page);
        }
    }

    private void write(JobCard card, CutPlan cuts, JobSheet sheet) throws IOException {
        if (asBuilt != null) {
            Written.anew(asBuilt, AsBuiltStarter.of(card, cuts, seenFrom(asBuilt)).getBytes(StandardCharsets.UTF_8));
            surroundings.err().println("Wrote " + asBuilt + ". Write in what was done, then: unthrum audit " + asBuilt);
        }
        if (page != null) {
            Written.file(page, JobCardPage.of(sheet));
            surroundings.err().println("Wrote " + page + ".");
        }
    }

    /** The survey as seen from another file; in full where both have no folder in common. */
    private String seenFrom(Path other) throws IOException {
        Path survey = file.toRealPath();
        Path folder = other.toAbsolutePath().getParent().toRealPath();
        boolean sameTree = survey.getRoot().equals(folder.getRoot());
        return (sameTree ? folder.relativize(survey) : survey).toString().replace('\\', '/');
    }
}
