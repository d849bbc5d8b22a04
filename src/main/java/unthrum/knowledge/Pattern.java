package unthrum.knowledge;

import java.util.Set;
import unthrum.facts.Caution;
import unthrum.facts.Conclusion;
import unthrum.facts.Duty;
import unthrum.facts.Hold;
import unthrum.facts.Limit;
import unthrum.facts.Pairing;
import unthrum.facts.Question;
import unthrum.facts.Veto;
import unthrum.facts.Want;

/** The few shapes that knowledge about treatments takes, each with the conclusions it may draw. */
public enum Pattern {
    A_REASON_AND_NO_COUNTER_REASON("a reason and no counter-reason", Want.class),
    ONLY_WITH_PROOF_OF_NO_COUNTER_REASON("only with proof of no counter-reason", Want.class),
    NEVER_HERE("never here", Veto.class),
    SECOND_CHOICE("second choice", Want.class, Duty.class),
    BRINGS_A_COMPANION("brings a companion", Want.class, Duty.class),
    USELESS_WITHOUT_ITS_COMPANION("useless without its companion", Pairing.class),
    NEVER_TOGETHER("never together", Pairing.class, Veto.class),
    SETS_A_BOUND("sets a bound", Limit.class),
    MUST_BE_DONE("must be done", Duty.class),
    SHOWN_WITH_THE_WORK("shown with the work", Caution.class),
    A_MEASUREMENT_DECIDES("a measurement decides", Question.class),
    WAIT("wait", Hold.class);

    private final String words;
    private final Set<Class<?>> conclusions;

    Pattern(String words, Class<?>... conclusions) {
        this.words = words;
        this.conclusions = Set.of(conclusions);
    }

    /** Whether a rule of this pattern may draw a conclusion of that kind. */
    public boolean allows(Class<? extends Conclusion> conclusion) {
        return conclusions.contains(conclusion);
    }

    @Override
    public String toString() {
        return words;
    }
}
