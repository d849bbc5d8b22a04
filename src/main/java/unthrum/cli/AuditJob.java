package unthrum.cli;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import unthrum.audit.Audit;
import unthrum.audit.Severity;
import unthrum.reading.Words;
import unthrum.report.AuditJson;
import unthrum.report.AuditText;

@Command(name = "audit", description = "Hold a finished job against the plan's own rules.", customSynopsis =
        "unthrum audit FILE [--fail-on SEVERITY] [--json] [--width N] [--plain]",
        headerHeading = "Examples:%n  unthrum audit van-built.yaml%n  unthrum audit van-built.yaml --fail-on unproven%n%n")
final class AuditJob implements Callable<Integer> {

    private final Surroundings surroundings;

    @Parameters(paramLabel = "FILE", description = "An as-built file (schema: unthrum schema built); it names its survey.")
    private Path file;

    @Option(names = "--fail-on", paramLabel = "SEVERITY",
            description = "danger, fault, waste, unproven or never: end with 1 from there upward; fault if not given.")
    private String failOn = "fault";

    @Option(names = "--json", description = "Print JSON (schema: unthrum schema audit).")
    private boolean json;

    @Mixin
    private Look look = new Look();

    AuditJob(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        int width = look.width(surroundings);
        boolean never = failOn.equals("never");
        Severity least = never ? Severity.UNPROVEN : severity(failOn);
        Audit audit = Jobs.audit(file);
        if (json) {
            surroundings.printUtf8(AuditJson.of(audit));
        } else {
            surroundings.print(AuditText.of(audit, width, look.style(surroundings)));
        }
        boolean fails = !never && audit.findings().stream().anyMatch(f -> f.severity().atLeast(least));
        return (fails ? ExitCode.FAULTS_FOUND : ExitCode.DONE).code();
    }

    private static Severity severity(String word) {
        return Arrays.stream(Severity.values()).filter(s -> Words.of(s).equals(word)).findFirst()
                .orElseThrow(() -> new WrongUse("--fail-on knows no '" + word + "'; there are: "
                        + Arrays.stream(Severity.values()).map(Words::of).collect(Collectors.joining(", ")) + ", never"));
    }
}
