package unthrum.audit;

import java.util.List;
import unthrum.facts.Limit;
import unthrum.facts.Limit.Bound;
import unthrum.knowledge.Standing;
import unthrum.material.Layer;
import unthrum.reasoning.engine.Judgement;

/** How heavy it is not to meet a conclusion: by the standing of the strongest rule behind it. */
final class Weighing {
    private Weighing() {
    }

    /** A layer under a veto: what does harm is a fault, what merely brings nothing is waste. */
    static Severity veto(Layer layer, List<Judgement> vetoes) {
        Standing standing = strongest(vetoes);
        boolean harmless = layer == Layer.DAMPING || layer == Layer.DECOUPLER;
        return switch (standing) {
            case SAFETY -> Severity.DANGER;
            case FIT -> unlessAssumed(vetoes, Severity.FAULT);
            case PHYSICS -> unlessAssumed(vetoes, harmless ? Severity.WASTE : Severity.FAULT);
            case PRACTICE, PREFERENCE -> unlessAssumed(vetoes, Severity.WASTE);
        };
    }

    /** A broken limit: too much of a good thing is waste, all else a fault. */
    static Severity limit(List<Judgement> limits) {
        Bound bound = ((Limit) limits.get(0).conclusion()).bound();
        boolean tooMuch = bound == Bound.COVERAGE || bound == Bound.PLAIN_FACE;
        return harm(limits, tooMuch ? Severity.WASTE : Severity.FAULT);
    }

    /** Safety makes it a danger; otherwise as said, as it is where no rule is concerned. */
    static Severity harm(List<Judgement> against, Severity otherwise) {
        if (against.isEmpty()) {
            return otherwise;
        }
        return strongest(against) == Standing.SAFETY ? Severity.DANGER : unlessAssumed(against, otherwise);
    }

    /** What rests on an assumption alone is not shown to be wrong, only not shown to be right. */
    private static Severity unlessAssumed(List<Judgement> against, Severity severity) {
        return against.stream().allMatch(Judgement::restsOnAssumption) ? Severity.UNPROVEN : severity;
    }

    private static Standing strongest(List<Judgement> judgements) {
        return judgements.stream().map(Judgement::standing).min(Standing::compareTo).orElseThrow();
    }
}
