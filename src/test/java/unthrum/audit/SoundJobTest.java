package unthrum.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import unthrum.Scenarios;
import unthrum.built.BuiltYaml;
import unthrum.built.Job;
import unthrum.built.JobReader;
import unthrum.plan.Plan;

@DisplayName("A job done as planned")
class SoundJobTest {
    static List<String> scenarios() {
        return Scenarios.names();
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("gives no finding and may leave")
    void sound(String scenario) {
        Plan plan = Scenarios.plan(scenario);
        Audit audit = Scenarios.AUDITOR.audit(plan, SoundJob.of(plan));
        assertThat(audit.findings()).isEmpty();
        assertThat(audit.release()).isEqualTo(Release.RELEASE);
        assertThat(audit.panels()).allMatch(Audit.AuditedPanel::isSound).hasSameSizeAs(plan.panels());
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("written down and read back is as sound")
    void writtenDown(String scenario, @TempDir Path folder) throws IOException {
        Plan plan = Scenarios.plan(scenario);
        Files.copy(Path.of("scenarios", scenario + ".yaml"), folder.resolve("survey.yaml"));
        Path file = Files.writeString(folder.resolve("built.yaml"), BuiltYaml.of(SoundJob.of(plan)));
        Job job = new JobReader(Scenarios.KNOWLEDGE, Scenarios.CATALOGUE, SoundJob.DAY).read(file);
        assertThat(job.survey()).isEqualTo(plan.survey());
        assertThat(Scenarios.AUDITOR.audit(plan, job.built()).findings()).isEmpty();
    }
}
