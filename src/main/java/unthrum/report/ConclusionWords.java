package unthrum.report;

import unthrum.facts.Caution;
import unthrum.facts.Conclusion;
import unthrum.facts.Duty;
import unthrum.facts.Hold;
import unthrum.facts.Limit;
import unthrum.facts.Pairing;
import unthrum.facts.Question;
import unthrum.facts.Veto;
import unthrum.facts.Want;
import unthrum.material.Layer;
import unthrum.reading.Words;

/** What a conclusion says, as a phrase. */
final class ConclusionWords {

    private ConclusionWords() {
    }

    static String of(Conclusion conclusion, Sentences sentences) {
        String place = sentences.place(conclusion.place());
        if (conclusion instanceof Want want) {
            return want.layer() == Layer.SEAL ? "closing " + place
                    : LimitWords.noun(want.layer()) + " on " + place;
        }
        if (conclusion instanceof Veto veto) {
            return "no " + (veto.layer() == Layer.ANY ? "layer" : veto.layer().word()) + " on " + place;
        }
        if (conclusion instanceof Limit limit) {
            String whom = limit.layer() == Layer.ANY ? "" : limit.layer().word() + " on ";
            return whom + place + ": " + LimitWords.of(limit);
        }
        if (conclusion instanceof Pairing pairing) {
            return LimitWords.of(pairing);
        }
        if (conclusion instanceof Question question) {
            return "the survey has to say '" + question.fact() + "' for " + place;
        }
        return act(conclusion) + ": " + place;
    }

    private static String act(Conclusion conclusion) {
        if (conclusion instanceof Duty duty) {
            return Words.of(duty.work());
        }
        if (conclusion instanceof Caution caution) {
            return Words.of(caution.danger());
        }
        return Words.of(((Hold) conclusion).obstacle());
    }
}
