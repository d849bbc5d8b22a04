package unthrum.audit;

import java.util.List;
import unthrum.built.Built;
import unthrum.plan.Plan;
import unthrum.effect.Layup;

/**
 * What became of a finished job.
 *
 * @param findings what is wrong, what must be dealt with before the vehicle leaves first
 * @param panels   every panel of the plan with what lies on it and whether it is sound
 * @param digest   of the survey, the as-built file, the rules and the catalogue
 */
public record Audit(Plan plan, Built built, List<Finding> findings, List<AuditedPanel> panels, FittedTotals totals,
                    String digest) {

    /** One panel: what lies on it, how many duties are shown to be done, and how many there are. */
    public record AuditedPanel(String name, Layup fitted, int duties, int findings) {
        public boolean isSound() {
            return findings == 0;
        }
    }

    /** Whether the vehicle may leave. */
    public Release release() {
        if (findings.stream().anyMatch(Finding::beforeLeaving)) {
            return Release.DO_NOT_RELEASE;
        }
        return findings.isEmpty() ? Release.RELEASE : Release.RELEASE_WITH_NOTES;
    }

    public List<Finding> of(Severity severity) {
        return findings.stream().filter(f -> f.severity() == severity).toList();
    }
}
