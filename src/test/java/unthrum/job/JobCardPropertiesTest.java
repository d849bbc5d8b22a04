package unthrum.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import unthrum.Scenarios;
import unthrum.plan.Plan;
import unthrum.reasoning.Drafts;
import unthrum.reasoning.Drafts.Draft;

@Label("The order of work on any survey")
class JobCardPropertiesTest {

    private static final int TRIES = 60;
    private static final JobPlanner PLANNER = new JobPlanner(Scenarios.KNOWLEDGE, StepTable.load(Scenarios.KNOWLEDGE));

    @Provide
    Arbitrary<List<Draft>> vehicles() {
        return Drafts.panels().list().ofMinSize(1).ofMaxSize(6);
    }

    @Provide
    Arbitrary<String> heads() {
        return Drafts.heads();
    }

    @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE)
    @Label("keeps every habit, leaves out no duty and no layer, and stands on no finished work")
    void sound(@ForAll("heads") String head, @ForAll("vehicles") List<Draft> panels, @ForAll long seed) {
        Plan plan = Scenarios.PLANNER.plan(Drafts.survey(head, panels, seed));
        JobCard card = PLANNER.card(plan);
        assertThat(CardChecks.outOfOrder(card)).isEmpty();
        assertThat(CardChecks.onFinishedWork(card)).isEmpty();
        assertThat(CardChecks.layersOutOfOrder(card)).isEmpty();
        assertThat(CardChecks.laid(card)).isEqualTo(CardChecks.planned(plan));
        assertThat(CardChecks.met(card)).isEqualTo(CardChecks.asked(plan));
    }

    @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE)
    @Label("does not depend on the order of panels and keys")
    void order(@ForAll("heads") String head, @ForAll("vehicles") List<Draft> panels, @ForAll long one,
               @ForAll long other) {
        assertThat(CardChecks.said(PLANNER.card(Scenarios.PLANNER.plan(Drafts.survey(head, panels, one)))))
                .isEqualTo(CardChecks.said(PLANNER.card(Scenarios.PLANNER.plan(Drafts.survey(head, panels, other)))));
    }
}
