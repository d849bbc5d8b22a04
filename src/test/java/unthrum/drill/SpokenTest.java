package unthrum.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import unthrum.reading.Problems;
import unthrum.reasoning.change.Outcome;

@DisplayName("An answer as it is typed, on a floor of two bays with two holes")
class SpokenTest {

    private static final Exercise FLOOR = Floors.ringing();

    @ParameterizedTest(name = "''{0}'' is {1}")
    @DisplayName("is understood as a verdict and layers at places")
    @CsvSource(delimiter = '|', textBlock = """
            damping 1                   | PATCH      | damping 1
            damping 1 2                 | PATCH      | damping
            damping                     | PATCH      | damping
            ' damping 2 ,  seal  a '    | PATCH      | damping 2; seal a
            barrier; damping 1          | COVER      | damping 1; barrier
            wear face; heat shield      | COVER      | heat shield; wear face
            seal b a                    | LEAVE_BARE | seal a b
            nothing                     | LEAVE_BARE | nothing
            nothing; seal a             | LEAVE_BARE | seal a
            measure; seal a             | ASK        | measure; seal a
            wait                        | HOLD       | wait
            """)
    void understood(String typed, String verdict, String again) {
        Outcome outcome = Spoken.outcome(typed, FLOOR, "typed");
        assertThat(outcome.verdict()).hasToString(verdict);
        assertThat(Spoken.of(outcome, FLOOR)).isEqualTo(again);
    }

    @ParameterizedTest(name = "''{0}'': {1}")
    @DisplayName("is asked for again when it says what cannot be said of this panel")
    @CsvSource(delimiter = '|', textBlock = """
            ''                | an empty answer
            dampin 1          | did you mean 'damping'?
            damping 3         | 'damping 3'; expected bays from 1 to 2
            damping a         | 'damping a'; expected bays from 1 to 2
            seal              | seal without a hole; expected the letters of the holes from a to b
            seal c            | expected holes from a to b
            barrier 1         | expected 'barrier' alone: it covers the whole panel
            carpet            | 'carpet'; expected heat shield, damping
            nothing; barrier  | layers together with nothing, wait or measure
            wait; seal a      | layers together with nothing, wait or measure
            wait; measure     | two of nothing, wait and measure
            """)
    void refused(String typed, String says) {
        assertThatThrownBy(() -> Spoken.outcome(typed, FLOOR, "typed")).isInstanceOf(Problems.class)
                .hasMessageStartingWith("typed: ").hasMessageContaining(says);
    }

    @Test
    @DisplayName("names its reasons by their numbers, or none")
    void reasons() {
        assertThat(Spoken.why("4 1, 4", FLOOR, "typed")).containsExactly(1, 4);
        assertThat(Spoken.why("none", FLOOR, "typed")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"0", "99", "x", "''", "-1"})
    @DisplayName("is asked again for a reason that is not offered")
    void noSuchReason(String typed) {
        assertThatThrownBy(() -> Spoken.why(typed, FLOOR, "typed")).isInstanceOf(Problems.class)
                .hasMessageContaining("from 1 to " + FLOOR.choices().size());
    }
}
