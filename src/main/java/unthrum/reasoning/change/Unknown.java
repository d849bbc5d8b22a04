package unthrum.reasoning.change;

import java.util.List;
import java.util.Optional;
import unthrum.facts.Question;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.change.Change.Turn;
import unthrum.derive.Assumed;

/**
 * A fact of a panel that nobody has stated, with all that it may turn out to be.
 *
 * @param assumed what was taken for it
 * @param ways    for each other thing that the panel may get the value that is nearest to today's
 */
public record Unknown(String panel, Lever lever, Optional<Assumed> assumed, PanelAdvice today, List<Way> ways,
                      Stakes stakes) {

    /** One way in which it may turn out. */
    public record Way(Turn turn, PanelAdvice advice, List<Effect> effects) {
    }

    /** Whether anything hangs on it. */
    public boolean decides() {
        return !stakes.isNothing();
    }

    /** Whether a rule asks for it today. */
    public boolean asked() {
        return today.questions().stream().map(j -> (Question) j.conclusion())
                .anyMatch(question -> question.fact().equals(lever.key()));
    }
}
