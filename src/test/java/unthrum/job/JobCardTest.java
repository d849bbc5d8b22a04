package unthrum.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import unthrum.Scenarios;
import unthrum.facts.Duty.Work;
import unthrum.facts.Hold;
import unthrum.facts.Hold.Obstacle;
import unthrum.material.Layer;
import unthrum.plan.PanelWork;
import unthrum.plan.Plan;
import unthrum.reasoning.Verdict;
import unthrum.reasoning.engine.Reason;

@DisplayName("The order of work of every scenario")
class JobCardTest {

    private static final JobPlanner PLANNER = new JobPlanner(Scenarios.KNOWLEDGE, StepTable.load(Scenarios.KNOWLEDGE));

    /** What brings heat or sparks. */
    private static final Set<String> HOT = Set.of("warm the metal", "cure rust and paint", "repair", "take off old layers");

    static List<String> scenarios() {
        return Scenarios.names();
    }

    private static JobCard card(String scenario) {
        return PLANNER.card(Scenarios.plan(scenario));
    }

    private static int index(JobCard card, String step) {
        return IntStream.range(0, card.steps().size()).filter(i -> card.steps().get(i).name().equals(step)).findFirst()
                .orElseThrow(() -> new AssertionError("no step '" + step + "' among " + card.steps().stream()
                        .map(Step::name).toList()));
    }

    @Nested
    @DisplayName("leaves nothing out")
    class Complete {
        @ParameterizedTest
        @MethodSource("unthrum.job.JobCardTest#scenarios")
        @DisplayName("every duty on a panel is met by exactly one step, for each rule that asks for it")
        void duties(String scenario) {
            Plan plan = Scenarios.plan(scenario);
            assertThat(CardChecks.met(PLANNER.card(plan))).isNotEmpty().isEqualTo(CardChecks.asked(plan));
        }

        @ParameterizedTest
        @MethodSource("unthrum.job.JobCardTest#scenarios")
        @DisplayName("every duty of the whole job is met, and by no two steps in one area for the same layer")
        void wholeJob(String scenario) {
            Plan plan = Scenarios.plan(scenario);
            JobCard card = PLANNER.card(plan);
            Set<String> met = card.steps().stream().flatMap(s -> s.asks().stream())
                    .filter(a -> a.conclusion().place().isVehicle()).flatMap(a -> a.reasons().stream())
                    .map(r -> r.rule().id()).collect(Collectors.toSet());
            assertThat(plan.duties().stream().flatMap(d -> d.reasons().stream()).map(r -> r.rule().id())).isNotEmpty()
                    .allSatisfy(id -> assertThat(met).contains(id));
            assertThat(card.steps()).allSatisfy(s -> assertThat(s.asks()).doesNotHaveDuplicates());
        }

        @ParameterizedTest
        @MethodSource("unthrum.job.JobCardTest#scenarios")
        @DisplayName("every layer of the plan is laid by one step, and every hole closed by one")
        void layers(String scenario) {
            JobCard card = card(scenario);
            assertThat(CardChecks.laid(card)).isNotEmpty().isEqualTo(CardChecks.planned(card.plan()));
            List<Object> closed = card.steps().stream().flatMap(s -> s.tasks().stream())
                    .flatMap(t -> t.closings().stream()).map(c -> (Object) c.opening().place()).toList();
            assertThat(closed).doesNotHaveDuplicates().hasSameElementsAs(card.plan().panels().stream()
                    .flatMap(p -> p.closings().stream()).map(c -> (Object) c.opening().place()).toList());
        }

        @ParameterizedTest
        @MethodSource("unthrum.job.JobCardTest#scenarios")
        @DisplayName("every danger is told before anything is touched")
        void dangers(String scenario) {
            JobCard card = card(scenario);
            Step safe = card.steps().get(index(card, "make safe"));
            assertThat(safe.cautions()).containsAll(card.plan().cautions()).containsAll(card.plan().panels().stream()
                    .flatMap(p -> p.advice().cautions().stream()).toList());
            int number = index(card, "make safe");
            assertThat(IntStream.range(0, card.steps().size()).filter(i -> i != number)
                    .filter(i -> !card.waitsFor().get(i).get(number)).mapToObj(i -> card.steps().get(i).name()))
                    .containsExactly("drive before");
        }
    }

    @Nested
    @DisplayName("keeps to the trade's order")
    class Ordered {
        @ParameterizedTest
        @MethodSource("unthrum.job.JobCardTest#scenarios")
        @DisplayName("no step stands before one that a habit puts first, and the steps name why they wait")
        void order(String scenario) {
            JobCard card = card(scenario);
            assertThat(CardChecks.outOfOrder(card)).isEmpty();
            assertThat(IntStream.range(0, card.steps().size()).boxed()).allSatisfy(i -> assertThat(card.after(i))
                    .allSatisfy(b -> assertThat(card.why(b, i)).anyMatch(id -> id.startsWith("order/"))));
        }

        @ParameterizedTest
        @MethodSource("unthrum.job.JobCardTest#scenarios")
        @DisplayName("nobody stands or kneels on finished work, and layers go on from the metal inward")
        void finishedWork(String scenario) {
            JobCard card = card(scenario);
            assertThat(card.steps()).anyMatch(s -> s.isUnderfoot() && s.kind().lays());
            assertThat(CardChecks.onFinishedWork(card)).isEmpty();
            assertThat(CardChecks.layersOutOfOrder(card)).isEmpty();
        }

        @ParameterizedTest
        @MethodSource("unthrum.job.JobCardTest#scenarios")
        @DisplayName("the vehicle is driven and handed over when every other step is done, and trim goes over a finished floor")
        void last(String scenario) {
            JobCard card = card(scenario);
            Set<String> proof = Set.of("try what moves", "drive after", "hand over");
            for (String end : proof) {
                IntStream.range(0, card.steps().size()).filter(i -> card.steps().get(i).name().equals(end)).forEach(i ->
                        assertThat(IntStream.range(0, card.steps().size())
                                .filter(o -> !proof.contains(card.steps().get(o).name())))
                                .allMatch(o -> card.waitsFor().get(i).get(o)));
            }
            List<Integer> floor = IntStream.range(0, card.steps().size()).filter(i -> card.steps().get(i).isUnderfoot()
                    && card.steps().get(i).kind().lays()).boxed().toList();
            List<Integer> trim = IntStream.range(0, card.steps().size()).filter(i -> card.steps().get(i).kind().step()
                    .equals("refit trim and mats")).boxed().toList();
            assertThat(floor).isNotEmpty();
            assertThat(trim).isNotEmpty().allSatisfy(t -> assertThat(floor).allMatch(card.waitsFor().get(t)::get));
        }

        @ParameterizedTest
        @MethodSource("unthrum.job.JobCardTest#scenarios")
        @DisplayName("light is looked for where holes were closed or a barrier goes on, and only there")
        void light(String scenario) {
            JobCard card = card(scenario);
            assertThat(card.steps()).filteredOn(s -> s.kind().step().equals("test for light")).isNotEmpty()
                    .allSatisfy(s -> assertThat(s.tasks()).isNotEmpty().allSatisfy(t -> {
                        var panel = card.plan().panel(t.panel()).orElseThrow();
                        assertThat(panel.layup().has(Layer.BARRIER) || !panel.closings().isEmpty()).isTrue();
                    }));
        }

        @ParameterizedTest
        @MethodSource("unthrum.job.JobCardTest#scenarios")
        @DisplayName("steps side by side wait for nothing of each other, and neither brings heat to vapour")
        void beside(String scenario) {
            JobCard card = card(scenario);
            int pairs = 0;
            for (int i = 0; i < card.steps().size(); i++) {
                for (int other : card.beside(i)) {
                    assertThat(card.beside(other)).contains(i);
                    assertThat(card.waitsFor().get(i).get(other) || card.waitsFor().get(other).get(i)).isFalse();
                    boolean vapour = card.steps().get(i).kind().step().equals("wipe with solvent");
                    assertThat(vapour && HOT.contains(card.steps().get(other).kind().step())).isFalse();
                    pairs++;
                }
            }
            assertThat(pairs).isPositive();
        }
    }

    @ParameterizedTest(name = "on the pick-up ''{0}'' comes before ''{1}''")
    @CsvSource(delimiter = '|', textBlock = """
            cure rust and paint         | vacuum, overhead
            vacuum, overhead            | wash, overhead
            wash, low                   | dry, low
            wipe with solvent, overhead | warm the metal, overhead
            warm the metal, overhead    | damp, overhead
            damp, overhead              | damp, upright
            damp, upright               | damp, low
            damp, low                   | tap again, low
            tap again, upright          | insulate, upright
            close holes, low            | barrier, low
            test for light, low         | barrier, low
            barrier, low                | insulate, low
            barrier, low                | refit trim and mats, low
            refit linings, overhead        | damp, floor
            barrier, floor              | refit trim and mats, floor
            pour water, floor           | refit trim and mats, floor
            refit trim and mats, floor           | try what moves
            try what moves              | drive after
            drive after                 | hand over
            """)
    void pickup(String first, String second) {
        JobCard card = card("shell-pickup");
        assertThat(card.waitsFor().get(index(card, second)).get(index(card, first))).isTrue();
    }

    @Nested
    @DisplayName("says what each step takes")
    class Takes {
        @Test
        @DisplayName("barriers take two, and large pieces overhead; a damped door takes one")
        void people() {
            JobCard card = card("shell-pickup");
            assertThat(card.steps().get(index(card, "barrier, floor")).people()).isEqualTo(2);
            assertThat(card.steps().get(index(card, "damp, overhead")).people()).isEqualTo(2);
            assertThat(card.steps().get(index(card, "damp, upright")).people()).isEqualTo(1);
        }

        @Test
        @DisplayName("contact adhesive flashes off for 5 to 15 minutes (data sheets), and what is not glued waits for nothing")
        void flashOff() {
            JobCard card = card("shell-pickup");
            Pause pause = card.steps().get(index(card, "barrier, floor")).pauses().get(0);
            assertThat(pause.least()).hasValue(300);
            assertThat(pause.most()).hasValue(900);
            assertThat(pause.sources()).containsExactly("data-contact-adhesive");
            assertThat(card.steps()).filteredOn(s -> s.kind().lays() && !s.supplies().glued())
                    .allSatisfy(s -> assertThat(s.pauses()).isEmpty());
            assertThat(card.steps().get(index(card, "barrier, floor")).consumables())
                    .contains("high-temperature contact adhesive");
        }

        @ParameterizedTest
        @MethodSource("unthrum.job.JobCardTest#scenarios")
        @DisplayName("damping waits for metal as warm as its sheets ask for")
        void warmth(String scenario) {
            JobCard card = card(scenario);
            assertThat(card.steps()).filteredOn(s -> s.kind().step().equals("damp")).isNotEmpty()
                    .allSatisfy(s -> assertThat(s.supplies().warmth().orElseThrow()).isEqualTo(s.tasks().stream()
                            .flatMap(t -> t.layers().stream()).mapToDouble(l -> l.material().bondsFrom().orElseThrow().si())
                            .max().orElseThrow()));
        }

        @Test
        @DisplayName("labour adds up: 5 min a panel and 20 min a square metre of damping")
        void labour() {
            JobCard card = card("one-pack-hatchback");
            Step damp = card.steps().get(index(card, "damp, upright"));
            double area = damp.tasks().stream().flatMap(t -> t.layers().stream()).mapToDouble(l -> l.area()).sum();
            assertThat(damp.labour()).isEqualTo(damp.tasks().size() * 300 + area * 1200);
            assertThat(card.labour()).isEqualTo(card.steps().stream().mapToDouble(Step::labour).sum());
            assertThat(card.soonest()).isGreaterThan(12 * 3600).isLessThan(2 * 24 * 3600);
        }
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("a panel that waits gets only what may end its wait, and is decided on before pieces are cut")
    void held(String scenario) {
        JobCard card = card(scenario);
        List<String> held = card.plan().panels().stream().filter(p -> p.verdict() == Verdict.HOLD).map(p -> p.name()).toList();
        assertThat(card.steps()).filteredOn(s -> s.kind().stage() == Stage.FIT || s.kind().stage() == Stage.CLEAN)
                .allSatisfy(s -> assertThat(s.tasks()).noneMatch(t -> held.contains(t.panel())));
        if (!held.isEmpty()) {
            int decide = index(card, "decide on waiting panels");
            List<String> decided = card.steps().get(decide).tasks().stream().map(Task::panel).toList();
            assertThat(decided).containsAll(held).allMatch(n -> held.contains(n) || isStopped(card, n));
            assertThat(card.plan().panels()).filteredOn(p -> isStopped(card, p.name())).allSatisfy(p -> assertThat(
                    card.steps()).filteredOn(s -> s.kind().stage() == Stage.MAKE_READY && s.tasks().stream()
                    .anyMatch(t -> t.panel().equals(p.name()))).extracting(s -> s.kind().step())
                    .isSubsetOf("look and measure", "test old layers", "decide on waiting panels"));
            assertThat(card.waitsFor().get(index(card, "measure, mark and cut")).get(decide)).isTrue();
        }
    }

    /** Untested pads, dangers nobody looked for, or an orange cable. */
    private static boolean isStopped(JobCard card, String panel) {
        var advice = card.plan().panel(panel).orElseThrow().advice();
        return advice.isHandsOff() || advice.holds().stream().map(j -> ((Hold) j.conclusion()).obstacle())
                .anyMatch(Set.of(Obstacle.UNTESTED_PADS, Obstacle.NOT_LOOKED_AT)::contains);
    }

    @Test
    @DisplayName("a new membrane goes on after all that lies behind it, though it is a repair")
    void late() {
        assertThat(StepTable.load(Scenarios.KNOWLEDGE).steps()).extracting(StepKind::step)
                .containsSubsequence("damp", "refit membranes", "refit linings");
        List<Reason> membranes = card("one-pack-hatchback").steps().stream()
                .filter(s -> s.kind().step().equals("refit membranes")).flatMap(s -> s.asks().stream())
                .filter(a -> PanelWork.work(a) == Work.REPAIR).flatMap(a -> a.reasons().stream()).toList();
        assertThat(membranes).extracting(r -> r.rule().id()).containsOnly("moisture/refit-membrane");
    }
}
