package unthrum.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
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
}
