package unthrum.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import unthrum.Scenarios;
import unthrum.built.Job;
import unthrum.built.JobReader;

@DisplayName("The finished pick-up")
class FinishedScenarioTest {
    private static Audit audit() {
        Job job = new JobReader(Scenarios.KNOWLEDGE, Scenarios.CATALOGUE, LocalDate.of(2026, 3, 12))
                .read(Path.of("scenarios", "finished", "shell-pickup.yaml"));
        return Scenarios.AUDITOR.audit(job);
    }

    @Test
    @DisplayName("has the twelve faults that its head names, and no other")
    void faults() {
        Audit audit = audit();
        assertThat(audit.findings()).extracting(f -> f.severity() + " " + f.place() + " " + f.mistake())
                .as("%s", audit.findings())
                .containsExactlyInAnyOrder(
                        "DANGER floor-left, seat bolt 1 LAYER_WHERE_NONE_MAY_BE",
                        "FAULT bulkhead-upper, empty grommet hole 2 WORK_NOT_DONE",
                        "FAULT tunnel LIMIT_BROKEN",
                        "FAULT cab-back-lower, bay 2 STILL_RINGS",
                        "FAULT floor-behind-seat, drain 1 WORK_NOT_DONE",
                        "FAULT bed-gate, bay 2 WANTED_LAYER_MISSING",
                        "FAULT bed-front TRIM_STANDS_OFF",
                        "UNPROVEN roof WORK_NOT_PROVEN",
                        "UNPROVEN toeboard-left WORK_NOT_PROVEN", "UNPROVEN toeboard-left WORK_NOT_PROVEN",
                        "UNPROVEN bed-floor WORK_NOT_PROVEN",
                        "UNPROVEN the vehicle SIGN_OFF_STALE");
        assertThat(audit.release()).isEqualTo(Release.DO_NOT_RELEASE);
    }
}
