package unthrum.survey;

import java.time.LocalDate;
import java.util.Optional;
import unthrum.reading.Says;

/** A fitter's judgement call: a rule that is set aside on one panel. It counts only with a reason. */
public record Overrule(
        @Says("The id of the rule that is set aside") String rule,
        @Says("Why the rule is wrong here") Optional<String> why,
        @Says("Who takes it on") String who,
        @Says("The day it was decided") LocalDate when) {
}
