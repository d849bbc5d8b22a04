package unthrum.reasoning;

import java.util.List;
import java.util.stream.Stream;
import unthrum.facts.Place;
import unthrum.facts.Veto;
import unthrum.facts.Want;
import unthrum.knowledge.Knowledge;
import unthrum.knowledge.RuleCard;
import unthrum.knowledge.Standing;
import unthrum.material.Layer;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.Reason;

/**
 * A want held against the vetoes at its place. A veto defeats every reason that it prevails over; what is left makes
 * the want's weight.
 *
 * @param vetoes those that defeat at least one of its reasons
 */
public record WeighedWant(Judgement judgement, List<Judgement> vetoes, double weight) {

    static List<WeighedWant> of(Case panel, Knowledge knowledge) {
        return panel.own(Want.class).stream().map(want -> weigh(want, panel, knowledge)).toList();
    }

    private static WeighedWant weigh(Judgement judgement, Case panel, Knowledge knowledge) {
        Want want = (Want) judgement.conclusion();
        List<Judgement> against = panel.all(Veto.class).stream().filter(veto -> concerns(veto, want)).toList();
        List<Judgement> defeating = against.stream().filter(v -> judgement.reasons().stream()
                .anyMatch(r -> v.standing().prevailsOver(r.rule().standing()))).toList();
        double weight = judgement.reasons().stream().filter(r -> stands(r, against)).map(Reason::rule).distinct()
                .mapToDouble(card -> weight(card, knowledge)).sum();
        return new WeighedWant(judgement, defeating, weight);
    }

    /** Room in front of the panel is no matter of a piece in one of its holes; a danger there is. */
    private static boolean concerns(Judgement judgement, Want want) {
        Veto veto = (Veto) judgement.conclusion();
        boolean face = veto.place().isWholePanel() && judgement.standing() == Standing.FIT;
        return want.layer().matches(veto.layer()) && want.place().within(veto.place())
                && !(face && want.layer() == Layer.SEAL);
    }

    private static boolean stands(Reason reason, List<Judgement> vetoes) {
        return vetoes.stream().noneMatch(v -> v.standing().prevailsOver(reason.rule().standing()));
    }

    private static double weight(RuleCard card, Knowledge knowledge) {
        return knowledge.number(card.weight().orElseThrow().threshold());
    }

    public Want want() {
        return (Want) judgement.conclusion();
    }

    public Layer layer() {
        return want().layer();
    }

    public Place place() {
        return want().place();
    }

    /** The reasons that no veto defeats. */
    public Stream<Reason> reasons() {
        return judgement.reasons().stream().filter(r -> stands(r, vetoes));
    }

    /** Whether any reason is left that no veto defeats. */
    public boolean stands() {
        return weight > 0;
    }

    /** Whether a rule of safety asks for it and no veto is as strong. */
    public boolean isForSafety() {
        return judgement.reasons().stream().anyMatch(r -> r.rule().standing() == Standing.SAFETY)
                && vetoes.stream().noneMatch(v -> v.standing() == Standing.SAFETY);
    }

    /** The rules for it and the rules against it. */
    public Stream<Judgement> judgements() {
        return Stream.concat(Stream.of(judgement), vetoes.stream());
    }
}
