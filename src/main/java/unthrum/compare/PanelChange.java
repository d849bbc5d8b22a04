package unthrum.compare;

import java.util.ArrayList;
import java.util.List;
import unthrum.compare.Side.PanelSide;
import unthrum.facts.Caution;
import unthrum.facts.Duty;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.Reason;

/**
 * One panel that differs.
 *
 * @param facts    what the survey says otherwise
 * @param nowSaid  what rules say only on the second side
 * @param nowQuiet what they say only on the first
 * @param effects  what the layers do otherwise
 */
public record PanelChange(PanelSide before, PanelSide after, List<FactChange> facts, List<Judgement> nowSaid,
                          List<Judgement> nowQuiet, List<EffectChange> effects) {

    static PanelChange of(PanelSide before, PanelSide after) {
        return new PanelChange(before, after, FactChange.between(before.entry(), after.entry()),
                beyond(after, before), beyond(before, after),
                EffectChange.between(EffectNumbers.of(before.effect()), EffectNumbers.of(after.effect())));
    }

    public String name() {
        return before.name();
    }

    /** Whether the panel gets something else than before. */
    public boolean isOutcome() {
        boolean verdict = before.verdict().isPresent() && after.verdict().isPresent()
                && !before.verdict().equals(after.verdict());
        return verdict || !before.layup().equals(after.layup());
    }

    public boolean isAny() {
        return isOutcome() || !facts.isEmpty() || !nowSaid.isEmpty() || !nowQuiet.isEmpty() || !effects.isEmpty();
    }

    /** Whether on both sides the walls that the layers make were measured and compared; else their sound is computed only. */
    public boolean wallsMeasured() {
        return before.effect().wallMeasured() && after.effect().wallMeasured();
    }

    /** More or less kg on it than before. */
    public double mass() {
        return after.layup().mass() - before.layup().mass();
    }

    /** More or less material used on it than before, in the catalogue's currency. */
    public double price() {
        return after.layup().price() - before.layup().price();
    }

    /** What decides a layup and is said on one side only: work and dangers follow from the layup and are left away. */
    private static List<Judgement> beyond(PanelSide one, PanelSide other) {
        List<Judgement> beyond = new ArrayList<>();
        for (Judgement judgement : one.judgements()) {
            if (judgement.conclusion() instanceof Duty || judgement.conclusion() instanceof Caution) {
                continue;
            }
            List<Reason> reasons = judgement.reasons().stream().filter(r -> !says(other, judgement, r)).toList();
            if (!reasons.isEmpty()) {
                beyond.add(new Judgement(judgement.conclusion(), reasons));
            }
        }
        return beyond;
    }

    private static boolean says(PanelSide side, Judgement judgement, Reason reason) {
        return side.judgements().stream().filter(j -> j.conclusion().equals(judgement.conclusion()))
                .flatMap(j -> j.reasons().stream()).anyMatch(r -> r.rule().id().equals(reason.rule().id()));
    }
}
