package unthrum.cli;

import java.io.IOException;
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
import unthrum.plan.Planner;
import unthrum.report.JobCardText;
import unthrum.report.JobSheet;

@Command(name = "jobcard", description = "Put the whole job into steps, in the order of work, to be ticked off.",
        customSynopsis = "unthrum jobcard FILE [--order FILE] [--json] [--page FILE] [--as-built FILE] [--width N] [--plain]",
        headerHeading = "Examples:%n  unthrum jobcard van.yaml%n  unthrum jobcard van.yaml --page card.html --as-built "
                + "van-built.yaml%n%n")
final class JobCardCommand implements Callable<Integer> {

    private final Surroundings surroundings;

    @Parameters(paramLabel = "FILE", description = "A survey file.")
    private Path file;

    @Mixin
    private Look look = new Look();

    JobCardCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws IOException {
        int width = look.width(surroundings);
        Knowledge knowledge = Knowledge.load();
        StepTable table = StepTable.load(knowledge);
        JobCard card = new JobPlanner(knowledge, table).card(new Planner(knowledge, Catalogue.load())
                .plan(Surveys.read(List.of(file)).get(0)));
        surroundings.print(JobCardText.of(JobSheet.of(card, knowledge), width, look.style(surroundings)));
        return ExitCode.DONE.code();
    }
}
