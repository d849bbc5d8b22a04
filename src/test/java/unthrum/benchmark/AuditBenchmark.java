package unthrum.benchmark;

import java.nio.file.Path;
import java.util.Arrays;
import unthrum.audit.Auditor;
import unthrum.audit.SoundJob;
import unthrum.built.Built;
import unthrum.built.Job;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.plan.Plan;
import unthrum.plan.Planner;
import unthrum.survey.Survey;
import unthrum.survey.SurveyReader;

/**
 * How long the audit of a finished job takes against advice on the same vehicle, and what of it is the audit's own, all
 * in one run. Not a test: start it by hand from the test class path,
 * {@code java -cp target/test-classes:target/classes:LIBRARIES unthrum.benchmark.AuditBenchmark}.
 */
final class AuditBenchmark {

    private static final Path WORKSHOP = Path.of("scenarios", "travelling-bicycle-workshop.yaml");
    private static final int WARM_UP = 1;
    private static final int ROUNDS = 3;

    private AuditBenchmark() {
    }

    public static void main(String[] arguments) {
        Survey survey = SurveyReader.read(WORKSHOP);
        Knowledge knowledge = Knowledge.load();
        Catalogue catalogue = Catalogue.load();
        Planner planner = new Planner(knowledge, catalogue);
        Auditor auditor = new Auditor(knowledge, catalogue);
        Plan plan = planner.plan(survey);
        Built built = SoundJob.of(plan);
        double[] advise = new double[ROUNDS];
        double[] audit = new double[ROUNDS];
        double[] own = new double[ROUNDS];
        for (int round = -WARM_UP; round < ROUNDS; round++) {
            double[] times = {millis(() -> planner.plan(survey)), millis(() -> auditor.audit(new Job(survey, built))),
                millis(() -> auditor.audit(plan, built))};
            if (round >= 0) {
                advise[round] = times[0];
                audit[round] = times[1];
                own[round] = times[2];
            }
        }
        System.out.printf("%d panels, medians of %d: advise %.0f ms, audit %.0f ms, of it the audit's own %.0f ms: "
                + "audit takes %.2f times advise%n", plan.panels().size(), ROUNDS, median(advise), median(audit),
                median(own), median(audit) / median(advise));
    }

    private static double millis(Runnable work) {
        long start = System.nanoTime();
        work.run();
        return (System.nanoTime() - start) / 1e6;
    }

    private static double median(double[] times) {
        double[] sorted = times.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
