package unthrum.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import unthrum.audit.Audit;
import unthrum.report.HandoverJson;
import unthrum.report.HandoverPage;
import unthrum.report.HandoverSheet;
import unthrum.report.HandoverText;

@Command(name = "handover", description = "Tell the owner in plain words what was done and what was left.",
        customSynopsis = "unthrum handover FILE [--page FILE | --json] [--width N] [--plain]",
        headerHeading = "Examples:%n  unthrum handover van-built.yaml%n  unthrum handover van-built.yaml --page owner.html%n%n")
final class HandOver implements Callable<Integer> {

    private final Surroundings surroundings;

    @Parameters(paramLabel = "FILE", description = "An as-built file.")
    private Path file;

    @Option(names = "--page", paramLabel = "FILE", description = "Write a page for printing; an older one is replaced.")
    private Path page;

    @Option(names = "--json", description = "Print JSON (schema: unthrum schema handover).")
    private boolean json;

    @Mixin
    private Look look = new Look();

    HandOver(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws IOException {
        int width = look.width(surroundings);
        if (json && page != null) {
            throw new WrongUse("give --page or --json, and not both");
        }
        Audit audit = Jobs.audit(file);
        HandoverSheet sheet = HandoverSheet.of(audit);
        if (json) {
            surroundings.printUtf8(HandoverJson.of(audit));
        } else if (page == null) {
            surroundings.print(HandoverText.of(sheet, width, look.style(surroundings)));
        } else {
            Written.file(page, HandoverPage.of(sheet));
            surroundings.err().println("Wrote " + page + ".");
        }
        return ExitCode.DONE.code();
    }
}
