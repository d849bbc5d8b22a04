package unthrum.reasoning.change;

import java.util.List;
import java.util.stream.Stream;
import unthrum.effect.Layup;
import unthrum.material.Layer;
import unthrum.reasoning.Verdict;
import unthrum.survey.OpeningState;

/**
 * The smallest change of one fact, or of two, that has an effect on a panel: with one step less it has not.
 *
 * @param turns   what is turned, and to what
 * @param effects what appears here and at no smaller change of the same fact
 * @param layup   what is then laid
 */
public record Change(List<Turn> turns, Outcome before, Outcome after, List<Effect> effects, Layup layup) {

    /** What a fitter can do about a change. */
    public enum Use {
        /** It can be brought about, and brings a layer or a verdict to act on. */
        ADVICE,
        /** It is within what a second measurement may find, or nothing was measured yet. */
        MEASURE,
        /** It only helps to understand. */
        UNDERSTANDING
    }

    /** A fact set to another value. */
    public record Turn(Lever lever, Object to) {

        /** Whether a fitter can bring it about. */
        boolean canBeMade() {
            return lever.isScale() ? lever.how().canMove(Measured.upward(this)) : lever.how().canChange();
        }
    }

    public Use use() {
        boolean undecided = before.verdict() == Verdict.HOLD || before.verdict() == Verdict.ASK;
        boolean gain = effects.stream().anyMatch(e -> e instanceof Effect.Gains gains && !isOnlyClosedAgain(gains))
                || undecided && after.verdict() != Verdict.LEAVE_BARE;
        if (gain && after.verdict() != Verdict.HOLD && lost().findAny().isEmpty()
                && turns.stream().allMatch(Turn::canBeMade)) {
            return Use.ADVICE;
        }
        return turns.stream().allMatch(Measured::mayBeFound) ? Use.MEASURE : Use.UNDERSTANDING;
    }

    /** Nobody opens a hole to have it closed. */
    private boolean isOnlyClosedAgain(Effect.Gains gains) {
        return gains.spot().layer() == Layer.SEAL && turns.stream().anyMatch(t -> t.to() == OpeningState.OPEN);
    }

    private Stream<Effect> lost() {
        return effects.stream().filter(Effect.Loses.class::isInstance);
    }
}
