package unthrum.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import unthrum.Scenarios;
import unthrum.built.Built;
import unthrum.built.BuiltPanel;
import unthrum.built.Done;
import unthrum.built.Edit;
import unthrum.facts.Duty.Work;
import unthrum.material.Layer;
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;
import unthrum.reading.Dimension;
import unthrum.reading.Quantity;
import unthrum.reasoning.Overruled;
import unthrum.survey.Overrule;
import unthrum.survey.Survey;

@DisplayName("A judgement call")
class JudgementCallsTest {
    private static final String SCENARIO = "sleeper-city-van";
    private static final Plan PLAN = Scenarios.plan(SCENARIO);
    private static final LocalDate DAY = LocalDate.of(2026, 2, 3);

    private static Plan overruled(String panel, String rule, String why) {
        Survey survey = PLAN.survey();
        Overrule overrule = new Overrule(rule, Optional.ofNullable(why), "A. Fitter", DAY);
        return Scenarios.PLANNER.plan(Edit.with(survey, "panels", survey.panels().stream()
                .map(p -> p.panel().equals(panel) ? Edit.with(p, "overrules", Optional.of(List.of(overrule))) : p)
                .toList()));
    }

    private static List<Finding> audited(Plan plan, Built built) {
        return Scenarios.AUDITOR.audit(plan, built).findings();
    }

    /** A panel on which a rule of practice keeps damping off a bay that another rule wants damped. */
    private static PlannedPanel curved() {
        return PLAN.panels().stream().filter(p -> p.advice().outvoted().stream().anyMatch(w ->
                w.layer() == Layer.DAMPING && w.vetoes().size() == 1 && w.vetoes().get(0).reasons().size() == 1
                && w.vetoes().get(0).reasons().get(0).rule().id().equals("diagnosis/curved-quiet"))).findFirst()
                .orElseThrow();
    }

    @Nested
    @DisplayName("by an overrule")
    class ByOverrule {
        @Test
        @DisplayName("sets a rule of practice aside; the plan carries it with the counter-argument, and the job is sound")
        void counts() {
            PlannedPanel before = curved();
            Plan plan = overruled(before.name(), "diagnosis/curved-quiet", "the client hears it at the bed");
            PlannedPanel after = plan.panel(before.name()).orElseThrow();
            Overruled carried = after.advice().panel().overruled().get(0);
            assertThat(carried.effect()).isEqualTo(Overruled.Effect.COUNTS);
            assertThat(carried.rule().orElseThrow().because()).isNotBlank();
            assertThat(after.advice().outvoted()).isNotEqualTo(before.advice().outvoted());
            assertThat(audited(plan, SoundJob.of(plan))).isEmpty();
        }

        @Test
        @DisplayName("does not count without a reason, and is a finding")
        void noReason() {
            Plan plan = overruled(curved().name(), "diagnosis/curved-quiet", null);
            assertThat(plan.panel(curved().name()).orElseThrow().layup()).isEqualTo(curved().layup());
            assertThat(audited(plan, SoundJob.of(plan))).singleElement().satisfies(f -> {
                assertThat(f.mistake()).isEqualTo(Mistake.OVERRULE_WITHOUT_REASON);
                assertThat(f.rules()).containsExactly("diagnosis/curved-quiet");
            });
        }

        @Test
        @DisplayName("never defeats safety or fit: the layer that follows it is a danger, and the overrule a fault")
        void tooStrong() {
            String roof = PLAN.panels().stream().filter(p -> p.advice().panel().judgements().stream()
                    .anyMatch(j -> j.reasons().stream().anyMatch(r -> r.rule().id().equals("barrier/not-on-roof"))))
                    .findFirst().orElseThrow().name();
            Plan plan = overruled(roof, "barrier/not-on-roof", "it will hold");
            Built built = SoundJob.of(plan);
            Built bad = Edit.with(built, "panels", built.panels().stream().map(p -> p.panel().equals(roof)
                    ? Edit.with(p, "layers", Optional.of(List.of(SoundJob.layer("vinyl-barrier-1.5", Optional.empty(), 0.01))))
                    : p).toList());
            List<Finding> findings = audited(plan, bad);
            assertThat(findings).anyMatch(f -> f.severity() == Severity.DANGER && f.rules().contains("barrier/not-on-roof"));
            assertThat(findings).anyMatch(f -> f.mistake() == Mistake.OVERRULE_NOT_ALLOWED
                    && f.severity() == Severity.FAULT);
        }

        @Test
        @DisplayName("is a finding when the facts have made it pointless")
        void pointless() {
            Plan plan = overruled(PLAN.panels().get(0).name(), "wear/bind-edges", "nobody sees them");
            boolean speaks = PLAN.panels().get(0).advice().panel().judgements().stream()
                    .anyMatch(j -> j.reasons().stream().anyMatch(r -> r.rule().id().equals("wear/bind-edges")));
            assertThat(speaks).isFalse();
            assertThat(audited(plan, SoundJob.of(plan))).singleElement().satisfies(f -> {
                assertThat(f.mistake()).isEqualTo(Mistake.OVERRULE_POINTLESS);
                assertThat(f.rules()).containsExactly("wear/bind-edges");
            });
        }
    }

    @Nested
    @DisplayName("by a signature")
    class BySignature {
        private final Built sound = SoundJob.of(PLAN);

        private Built signed(Built built, String digest) {
            return Edit.with(built, "signOff", Optional.of(new Built.SignOff("B. Senior", DAY, digest)));
        }

        @Test
        @DisplayName("holds for the exact content, and is stale after any change")
        void stale() {
            String digest = Scenarios.AUDITOR.audit(PLAN, sound).digest();
            assertThat(audited(PLAN, signed(sound, digest))).isEmpty();
            Built changed = Edit.with(sound, "note", Optional.of("one more piece"));
            assertThat(audited(PLAN, signed(changed, digest))).singleElement()
                    .satisfies(f -> assertThat(f.mistake()).isEqualTo(Mistake.SIGN_OFF_STALE));
            Plan other = overruled(curved().name(), "diagnosis/curved-quiet", "the client hears it");
            assertThat(audited(other, signed(SoundJob.of(other), digest))).extracting(Finding::mistake)
                    .containsExactly(Mistake.SIGN_OFF_STALE);
        }
    }

    @Nested
    @DisplayName("by a bare word")
    class ByWord {
        @Test
        @DisplayName("proves nothing: 'all done' gives 'unproven' for every piece of work, and no release")
        void allDone() {
            Built sound = SoundJob.of(PLAN);
            Built word = Edit.with(Edit.with(sound, "done", Optional.empty()), "allDone", Optional.of(true));
            word = Edit.with(word, "panels", sound.panels().stream().map(JudgementCallsTest::silent).toList());
            Audit audit = Scenarios.AUDITOR.audit(PLAN, word);
            assertThat(audit.findings()).isNotEmpty().allMatch(f -> f.severity() == Severity.UNPROVEN);
            assertThat(audit.findings()).anyMatch(f -> f.evidence().contains(Evidence.of("all done")));
            assertThat(audit.release()).isEqualTo(Release.DO_NOT_RELEASE);
        }

        @Test
        @DisplayName("is not even heard where no panel is written down: each that was planned is unproven")
        void nothing() {
            Audit audit = Scenarios.AUDITOR.audit(PLAN, Edit.with(SoundJob.of(PLAN), "panels", List.of()));
            assertThat(audit.findings()).extracting(Finding::mistake).contains(Mistake.NOT_RECORDED);
            assertThat(audit.findings()).allMatch(f -> f.severity() == Severity.UNPROVEN);
            assertThat(audit.release()).isNotEqualTo(Release.RELEASE);
        }

        @Test
        @DisplayName("with a reason explains another material that keeps every limit")
        void because() {
            Seed swap = Seeds.of(SCENARIO).stream().filter(s -> s.mistake().startsWith("another material")).findFirst()
                    .orElseThrow();
            Seed explained = new Seed(swap.mistake(), swap.scenario(), swap.panel(), p -> Edit.with(swap.edit().apply(p),
                    "differsBecause", Optional.of("the planned one was sold out")), List.of());
            assertThat(audited(PLAN, explained.in(SoundJob.of(PLAN)))).isEmpty();
        }
    }

    private static BuiltPanel silent(BuiltPanel panel) {
        BuiltPanel silent = panel;
        for (String component : List.of("done", "tapAfter", "trim", "travel", "drains", "closed", "when")) {
            silent = Edit.with(silent, component, Optional.empty());
        }
        return silent;
    }

    @Nested
    @DisplayName("by showing it")
    class ByShowing {
        private List<Finding> with(Work work, Optional<String> photo, Optional<List<Built.Measured>> measured) {
            Built sound = SoundJob.of(PLAN);
            List<Done> done = sound.done().orElseThrow().stream().map(d -> d.work().contains(work)
                    ? Edit.with(Edit.with(d, "photo", photo), "measured", Optional.empty()) : d).toList();
            return audited(PLAN, Edit.with(Edit.with(sound, "done", Optional.of(done)), "measured", measured));
        }

        @Test
        @DisplayName("photographs are shown by one, whoever says that they were taken")
        void photographs() {
            assertThat(with(Work.PHOTOGRAPH, Optional.of("1 to 40"), Optional.empty())).isEmpty();
            assertThat(with(Work.PHOTOGRAPH, Optional.empty(), Optional.empty())).singleElement()
                    .satisfies(f -> assertThat(f.rules()).containsExactly("proof/photograph"));
        }

        @Test
        @DisplayName("a road test is shown by its levels before and after")
        void roadTest() {
            Quantity level = new Quantity(72, Dimension.LEVEL);
            assertThat(with(Work.ROAD_TEST, Optional.empty(), Optional.of(List.of(new Built.Measured("at the ear",
                    Optional.of(level), Optional.of(level)))))).isEmpty();
            assertThat(with(Work.ROAD_TEST, Optional.empty(), Optional.of(List.of(new Built.Measured("at the ear",
                    Optional.of(level), Optional.empty()))))).singleElement()
                    .satisfies(f -> assertThat(f.rules()).containsExactly("proof/road-test"));
        }
    }
}
