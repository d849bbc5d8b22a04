package unthrum.report;

import unthrum.knowledge.Knowledge;
import unthrum.knowledge.ThresholdEntry;

/** A number of the trade in words: what it is, where it comes from, and what it changes where nobody published it. */
final class NumberWords {

    private NumberWords() {
    }

    /** '4 kg/m²: the heaviest single layer on a roof (a number from memory, to be checked; tried …)'. */
    static String of(ThresholdEntry number, Knowledge knowledge) {
        return number.value().dimension().inFull(number.value().si()) + ": " + number.meaning() + " ("
                + knowledge.sourceTitle(number.source()) + number.tried().map(t -> "; tried " + t).orElse("") + ")";
    }
}
