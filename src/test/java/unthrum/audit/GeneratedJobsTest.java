package unthrum.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.statistics.Statistics;
import unthrum.Scenarios;
import unthrum.built.Built;
import unthrum.built.BuiltPanel;
import unthrum.built.Edit;
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;
import unthrum.reasoning.Drafts;
import unthrum.reasoning.Drafts.Draft;

@Label("On any job, judged by an oracle that knows only the plan's conclusions")
class GeneratedJobsTest {

    @Provide
    Arbitrary<List<Draft>> vehicles() {
        return Arbitraries.frequencyOf(Tuple.of(1, Drafts.panels()), Tuple.of(2, treatable())).list().ofMinSize(1)
                .ofMaxSize(3);
    }

    /** Panels that ring, with room and reach and nothing to wait for, since most others stay bare. */
    static Arbitrary<Draft> treatable() {
        return Combinators.combine(Drafts.panels(), Arbitraries.of("12 mm", "18 mm", "26 mm", "45 mm"),
                Arbitraries.of("rings", "rings", "dull")).as((panel, room, tap) -> panel.with("clearance", room)
                .with("tap", tap).with("reach", "open").with("missing", "none").with("behind", "none")
                .with("surface", "{paint: sound, dirt: clean, rust: none, old: none}"));
    }

    @Provide
    Arbitrary<String> heads() {
        return Drafts.heads();
    }

    private static Plan plan(String head, List<Draft> panels) {
        return Scenarios.PLANNER.plan(Drafts.survey(head, panels, 0));
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    @Label("the plan's own layup as built, with everything proven, gives no finding")
    void sound(@ForAll("heads") String head, @ForAll("vehicles") List<Draft> panels) {
        Plan plan = plan(head, panels);
        assertThat(Scenarios.AUDITOR.audit(plan, SoundJob.of(plan)).findings()).as(head + panels).isEmpty();
    }

    @Property(tries = 1000, edgeCases = EdgeCasesMode.NONE)
    @Label("one thing done otherwise gives exactly the findings that it justifies")
    void perturbed(@ForAll("heads") String head, @ForAll("vehicles") List<Draft> panels,
                   @ForAll Perturbation.Kind kind, @ForAll long seed) {
        Plan plan = plan(head, panels);
        Built sound = SoundJob.of(plan);
        Random random = new Random(seed);
        List<Perturbation> possible = new ArrayList<>();
        for (PlannedPanel panel : plan.panels()) {
            Perturbations.of(kind, new Oracle(plan, panel), sound.panel(panel.name()).orElseThrow(), random)
                    .ifPresent(possible::add);
        }
        Assume.that(!possible.isEmpty());
        Perturbation one = possible.get(random.nextInt(possible.size()));
        List<Finding> findings = Scenarios.AUDITOR.audit(plan, with(sound, one.built())).findings();
        Statistics.collect(kind + (one.expected().isEmpty() ? ", rightly nothing found" : ", found"));
        assertThat(findings.stream().map(Expected::of))
                .as("%s of %s%n%s%s%n%s", kind, one.built(), head, panels, findings)
                .containsExactlyInAnyOrderElementsOf(one.expected().stream().distinct().toList());
    }

    private static Built with(Built job, BuiltPanel panel) {
        Stream<BuiltPanel> panels = job.panels().stream().map(p -> p.panel().equals(panel.panel()) ? panel : p);
        return Edit.with(job, "panels", panels.toList());
    }
}
