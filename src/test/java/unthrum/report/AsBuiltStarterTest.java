package unthrum.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import unthrum.pieces.Bench;
import unthrum.pieces.Wishes;
import unthrum.Scenarios;
import unthrum.audit.Audit;
import unthrum.audit.Mistake;
import unthrum.audit.Release;
import unthrum.audit.Severity;
import unthrum.built.Job;
import unthrum.built.JobReader;
import unthrum.job.JobPlanner;
import unthrum.job.StepTable;
import unthrum.plan.Plan;

@DisplayName("The as-built file that a job card starts")
class AsBuiltStarterTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 12);
    private static final JobPlanner PLANNER = new JobPlanner(Scenarios.KNOWLEDGE, StepTable.load(Scenarios.KNOWLEDGE));

    @TempDir
    private Path folder;

    static java.util.List<String> scenarios() {
        return Scenarios.names();
    }

    private static String starter(String scenario) {
        return AsBuiltStarter.of(PLANNER.card(Scenarios.plan(scenario)),
                Bench.cut(Scenarios.plan(scenario), Wishes.usual()), "survey.yaml");
    }

    private Audit audit(String scenario, String built) throws IOException {
        Plan plan = Scenarios.plan(scenario);
        Files.copy(Path.of("scenarios", scenario + ".yaml"), folder.resolve("survey.yaml"));
        Job job = new JobReader(Scenarios.KNOWLEDGE, Scenarios.CATALOGUE, TODAY)
                .read(Files.writeString(folder.resolve("built.yaml"), built));
        assertThat(job.survey()).isEqualTo(plan.survey());
        return Scenarios.AUDITOR.audit(plan, job.built());
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("claims nothing: the audit finds it unfinished, every panel with work unproven, and nothing else")
    void open(String scenario) throws IOException {
        Audit audit = audit(scenario, starter(scenario));
        assertThat(audit.release()).isNotEqualTo(Release.RELEASE);
        assertThat(audit.findings()).allMatch(f -> f.severity() == Severity.UNPROVEN)
                .anyMatch(f -> f.mistake() == Mistake.NOT_FINISHED);
        assertThat(audit.plan().panels()).filteredOn(p -> !p.layup().isEmpty()).isNotEmpty().allSatisfy(p -> assertThat(
                audit.findings()).anyMatch(f -> f.mistake() == Mistake.NOT_RECORDED && f.place().panel().equals(p.name())));
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("with the marks off, but nobody and no day and no photograph named, is still not proved")
    void marksOff(String scenario) throws IOException {
        Audit audit = audit(scenario, withoutMarks(starter(scenario)).replace("who: unknown", "who: A. Fitter"));
        assertThat(audit.release()).isNotEqualTo(Release.RELEASE);
        assertThat(audit.findings()).anyMatch(f -> f.mistake() == Mistake.WORK_NOT_PROVEN)
                .anyMatch(f -> f.mistake() == Mistake.NOT_FINISHED)
                .noneMatch(f -> f.mistake() == Mistake.NOT_RECORDED);
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("filled in to the last unknown, is a sound job")
    void filled(String scenario) throws IOException {
        String filled = withoutMarks(starter(scenario)).replace("who: unknown", "who: A. Fitter")
                .replaceAll("(when|finished): unknown", "$1: " + TODAY).replace("photo: unknown", "photo: 0417.jpg")
                .replace("measured: unknown", "measured: 72 dB before and 69 dB after")
                .replace("over: unknown", "over: none").replace("tap after: unknown", "tap after: dead")
                .replace("trim: unknown", "trim: {back: freely, gap: 0 mm}").replace("travel: unknown", "travel: free")
                .replace("drains: unknown", "drains: run");
        assertThat(filled.lines().filter(l -> !l.stripLeading().startsWith("#"))).noneMatch(l -> l.contains("unknown"));
        Audit audit = audit(scenario, filled);
        assertThat(audit.findings()).isEmpty();
        assertThat(audit.release()).isEqualTo(Release.RELEASE);
    }

    /** As a fitter would: strikes each 'unknown' that has marked lines below it, and the marks. */
    private static String withoutMarks(String starter) {
        return starter.replaceAll("layers: unknown\n +#: none.*\n", "layers: none\n")
                .replaceAll(": unknown\n( *)#: ", ":\n$1#: ").replace("#: ", "");
    }
}
