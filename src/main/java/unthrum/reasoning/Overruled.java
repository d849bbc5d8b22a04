package unthrum.reasoning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import unthrum.knowledge.RuleCard;
import unthrum.knowledge.Standing;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.Reason;
import unthrum.survey.Overrule;

/**
 * A fitter's overrule held against the case of its panel.
 *
 * @param against what the rule says there: the counter-argument
 */
public record Overruled(Overrule entry, Effect effect, List<Judgement> against) {

    /** What an overrule comes to. */
    public enum Effect {
        /** The rule is set aside. */
        COUNTS,
        /** Nobody wrote why, so it does not count. */
        NO_REASON,
        /** The rule stands on safety, fit or physics, which nobody's judgement sets aside. */
        TOO_STRONG,
        /** The rule does not speak on the panel, or not any more. */
        POINTLESS
    }

    static Overruled of(Overrule entry, List<Judgement> judgements) {
        List<Judgement> against = new ArrayList<>();
        for (Judgement judgement : judgements) {
            List<Reason> said = judgement.reasons().stream().filter(r -> r.rule().id().equals(entry.rule())).toList();
            if (!said.isEmpty()) {
                against.add(new Judgement(judgement.conclusion(), said));
            }
        }
        return new Overruled(entry, effect(entry, against), against);
    }

    private static Effect effect(Overrule entry, List<Judgement> against) {
        if (against.isEmpty()) {
            return Effect.POINTLESS;
        }
        if (against.get(0).standing().compareTo(Standing.PRACTICE) < 0) {
            return Effect.TOO_STRONG;
        }
        return entry.why().isPresent() ? Effect.COUNTS : Effect.NO_REASON;
    }

    /** The rule that is set aside, if it speaks on the panel. */
    public Optional<RuleCard> rule() {
        return against.stream().map(j -> j.reasons().get(0).rule()).findFirst();
    }

    /** The conclusions that are left when the overrules that count have taken their rules' support away. */
    static List<Judgement> without(List<Overruled> overruled, List<Judgement> judgements) {
        List<String> gone = overruled.stream().filter(o -> o.effect() == Effect.COUNTS).map(o -> o.entry().rule())
                .toList();
        if (gone.isEmpty()) {
            return judgements;
        }
        return judgements.stream().map(j -> new Judgement(j.conclusion(),
                j.reasons().stream().filter(r -> !gone.contains(r.rule().id())).toList()))
                .filter(j -> !j.reasons().isEmpty()).toList();
    }
}
