package unthrum.drill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SortedSet;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import unthrum.material.Layer;
import unthrum.reasoning.Verdict;

@DisplayName("An answer is marked against the case")
class MarkTest {

    private static Mark mark(Exercise exercise, String gets, SortedSet<Integer> why) {
        return Mark.of(exercise, new Answer(Spoken.outcome(gets, exercise, "typed"), why));
    }

    /** The numbers of all reasons offered that hold. */
    private static SortedSet<Integer> holding(Exercise exercise) {
        SortedSet<Integer> why = new TreeSet<>();
        exercise.choices().stream().filter(Choice.True.class::isInstance).forEach(c -> why.add(exercise.number(c)));
        return why;
    }

    @Nested
    @DisplayName("on a floor over the road of which the first bay rings")
    class Ringing {

        private final Exercise floor = Floors.ringing();

        @Test
        @DisplayName("right: damping there, a barrier all over, and the empty grommet hole sealed, each with a reason")
        void right() {
            Mark mark = mark(floor, "damping 1; barrier; seal a", holding(floor));
            assertThat(mark.result()).isEqualTo(Result.RIGHT);
            assertThat(mark.bySubject()).containsOnlyKeys(floor.subjects())
                    .containsKeys("damping", "barrier", "sealing");
        }

        @Test
        @DisplayName("right for the wrong reason: the layers are right and a reason does not hold")
        void untrueReason() {
            Choice untrue = floor.choices().stream().filter(Choice.Untrue.class::isInstance).findFirst().orElseThrow();
            SortedSet<Integer> why = holding(floor);
            why.add(floor.number(untrue));
            Mark mark = mark(floor, "damping 1; barrier; seal a", why);
            assertThat(mark.result()).isEqualTo(Result.WRONG_REASON);
            assertThat(mark.untrue()).containsExactly((Choice.Untrue) untrue);
            assertThat(mark.unsaid()).isEmpty();
            assertThat(mark.bySubject()).containsEntry(untrue.rule().subject(), Result.WRONG_REASON);
        }

        @Test
        @DisplayName("right for the wrong reason: nothing was said for one of the layers")
        void unsaidReason() {
            SortedSet<Integer> why = holding(floor);
            floor.choices().stream().filter(c -> c.rule().subject().equals("damping")).map(floor::number)
                    .forEach(why::remove);
            Mark mark = mark(floor, "damping 1; barrier; seal a", why);
            assertThat(mark.result()).isEqualTo(Result.WRONG_REASON);
            assertThat(mark.unsaid()).singleElement().satisfies(g -> assertThat(g.layer()).contains(Layer.DAMPING));
            assertThat(mark.bySubject()).containsEntry("damping", Result.WRONG_REASON)
                    .containsEntry("barrier", Result.RIGHT);
        }

        @Test
        @DisplayName("wrong: the dead bay damped, the ringing one not, and the drain sealed; the rules for it answer")
        void wrong() {
            Mark mark = mark(floor, "damping 2; barrier; seal a b", holding(floor));
            assertThat(mark.result()).isEqualTo(Result.WRONG);
            assertThat(mark.missed()).extracting(s -> s.layer() + " " + s.place().part())
                    .containsExactly("DAMPING bay 1");
            assertThat(mark.beside()).extracting(s -> s.layer() + " " + s.place().part())
                    .containsExactly("DAMPING bay 2", "SEAL drain 2");
            assertThat(mark.beside()).extracting(s -> mark.against(s).get(0).id())
                    .containsExactly("diagnosis/dead-bay", "sealing/drain");
            assertThat(mark.bySubject()).containsEntry("damping", Result.WRONG).containsEntry("diagnosis", Result.WRONG)
                    .containsEntry("sealing", Result.WRONG).containsEntry("barrier", Result.RIGHT);
        }

        @Test
        @DisplayName("wrong: told to wait, though nothing holds it")
        void waits() {
            Mark mark = mark(floor, "wait", new TreeSet<>());
            assertThat(mark.result()).isEqualTo(Result.WRONG);
            assertThat(mark.verdictDiffers()).isTrue();
        }
    }

    @Test
    @DisplayName("a panel that waits wants to be told so, and why; layers on it are wrong by what holds it alone")
    void waiting() {
        Exercise rusty = Floors.rusty();
        assertThat(rusty.outcome().verdict()).isEqualTo(Verdict.HOLD);
        assertThat(mark(rusty, "wait", holding(rusty)).result()).isEqualTo(Result.RIGHT);
        Mark wrong = mark(rusty, "damping; barrier", holding(rusty));
        assertThat(wrong.result()).isEqualTo(Result.WRONG);
        assertThat(wrong.bySubject()).containsOnlyKeys("preparation").containsEntry("preparation", Result.WRONG);
    }

    @Test
    @DisplayName("a panel that stays bare wants a reason for that too")
    void bare() {
        Exercise dead = Floors.dead();
        assertThat(dead.outcome().verdict()).isEqualTo(Verdict.LEAVE_BARE);
        assertThat(mark(dead, "nothing", holding(dead)).result()).isEqualTo(Result.RIGHT);
        assertThat(mark(dead, "nothing", new TreeSet<>()).result()).isEqualTo(Result.WRONG_REASON);
        assertThat(mark(dead, "damping 1", holding(dead)).result()).isEqualTo(Result.WRONG);
    }

    @Test
    @DisplayName("a panel that nobody tapped is to be measured first")
    void measured() {
        Exercise untapped = Floors.untapped();
        assertThat(untapped.outcome().verdict()).isEqualTo(Verdict.ASK);
        assertThat(mark(untapped, "measure", holding(untapped)).result()).isEqualTo(Result.RIGHT);
        assertThat(mark(untapped, "nothing", holding(untapped)).verdictDiffers()).isTrue();
    }
}
