package unthrum.drill;

import unthrum.knowledge.RuleCard;
import unthrum.reasoning.engine.Reason;
import unthrum.reasoning.engine.Silence;

/** One of the reasons that an apprentice is offered. */
public sealed interface Choice {

    RuleCard rule();

    /** It holds on this panel, and the case rests on it. */
    record True(Reason reason) implements Choice {
        @Override
        public RuleCard rule() {
            return reason.rule();
        }
    }

    /** It does not hold on this panel; the silence tells what is missing. */
    record Untrue(Silence silence) implements Choice {
        @Override
        public RuleCard rule() {
            return silence.rule();
        }
    }
}
