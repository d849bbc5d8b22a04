package unthrum.report;

import java.util.List;
import java.util.stream.Stream;
import unthrum.knowledge.Knowledge;
import unthrum.material.Layer;
import unthrum.reasoning.Considered;
import unthrum.reasoning.change.WhyNot;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.Reason;
import unthrum.reasoning.engine.Silence;
import unthrum.reasoning.engine.Silence.Outcome;

/** The cause why a layer is not there, in one short paragraph, and on request all that lies behind it. */
final class WhyNotWords {

    private final Sentences sentences;
    private final ConditionWords conditions;

    WhyNotWords(Sentences sentences, Knowledge knowledge) {
        this.sentences = sentences;
        this.conditions = new ConditionWords(knowledge);
    }

    String of(WhyNot answer) {
        String what = what(answer);
        if (answer instanceof WhyNot.NobodyAsks none) {
            return "No " + what + ": nothing asks for it. " + nearest(none.silent().get(0));
        }
        if (answer instanceof WhyNot.Outvoted outvoted) {
            return "No " + what + ", though it is wanted: " + first(outvoted.want().vetoes());
        }
        if (answer instanceof WhyNot.Waits waits) {
            return "No " + what + " yet: " + first(waits.holds());
        }
        if (answer instanceof WhyNot.Rejected rejected) {
            return "No " + what + ", though it is wanted: no material of the catalogue keeps the limits. "
                    + closest(rejected.nearest());
        }
        if (answer instanceof WhyNot.Alone alone) {
            return "No " + what + ", though it is wanted: a material would do, but not together with what it needs. "
                    + English.capital(first(alone.broken()));
        }
        WhyNot.Outdone outdone = (WhyNot.Outdone) answer;
        return "No " + what + ": " + GainWords.why(outdone.with(), outdone.chosen());
    }

    /** What is not there: 'damping on bay 2', 'closing of the drain'. */
    String what(WhyNot answer) {
        String place = answer.place().isWholePanel() ? "" : " on " + sentences.place(answer.place());
        return answer.layer() == Layer.SEAL ? "closing of " + sentences.place(answer.place())
                : answer.layer().word() + place;
    }

    /** Each rule and candidate behind the answer. */
    List<String> tree(WhyNot answer) {
        if (answer instanceof WhyNot.NobodyAsks none) {
            return none.silent().stream().map(this::silence).toList();
        }
        if (answer instanceof WhyNot.Outvoted outvoted) {
            return outvoted.want().judgements().flatMap(this::reasons).map(English::capital).toList();
        }
        if (answer instanceof WhyNot.Waits waits) {
            return waits.holds().stream().flatMap(this::reasons).map(English::capital).toList();
        }
        if (answer instanceof WhyNot.Rejected rejected) {
            return rejected.candidates().stream().map(this::candidate).toList();
        }
        return answer instanceof WhyNot.Alone alone ? alone.broken().stream().flatMap(this::reasons).map(English::capital).toList()
                : List.of();
    }

    private String first(List<Judgement> judgements) {
        return judgements.stream().flatMap(this::reasons).findFirst().orElse("");
    }

    private Stream<String> reasons(Judgement judgement) {
        return judgement.reasons().stream().map(this::reason);
    }

    private String reason(Reason reason) {
        return sentences.because(reason) + ". [" + reason.rule().id() + "]";
    }

    private String closest(Considered nearest) {
        return "The nearest, " + nearest.material().material() + ", falls because " + first(nearest.rejectedBy());
    }

    private String candidate(Considered candidate) {
        return candidate.material().material() + ": " + String.join(" ",
                candidate.rejectedBy().stream().flatMap(this::reasons).toList());
    }

    private String nearest(Silence silence) {
        List<String> missing = missing(silence);
        return "The rule that comes nearest, '" + silence.rule().name() + "', would need "
                + English.and(missing) + ". [" + silence.rule().id() + "]";
    }

    private String silence(Silence silence) {
        return silence.rule().name() + ": " + wouldNeed(silence);
    }

    /** What a rule would need in order to speak, with its id behind it. */
    String wouldNeed(Silence silence) {
        return "it would need " + English.and(missing(silence)) + ". [" + silence.rule().id() + "]";
    }

    private List<String> missing(Silence silence) {
        return silence.conditions().stream().filter(l -> l.outcome() != Outcome.HELD).map(conditions::of)
                .distinct().toList();
    }
}
