package unthrum.plan;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import unthrum.effect.Treated;
import unthrum.facts.Place;
import unthrum.reasoning.Closing;
import unthrum.effect.Layup;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.Verdict;

/**
 * One panel of the plan.
 *
 * @param advice  the advice on it, with the materials of the plan
 * @param layup   what of the advised layup there is enough mass, money and stock for
 * @param leftOut the rest of it; a hole that stays open among it, with an area of 0
 */
public record PlannedPanel(PanelAdvice advice, Layup layup, List<LeftOut> leftOut) {

    public String name() {
        return advice.name();
    }

    /** The advice on what is really laid: its duties, what it serves and what it leaves unserved. */
    public PanelAdvice asPlanned() {
        return advice.with(layup);
    }

    /** The panel as it will be. */
    public Treated treated() {
        return new Treated(advice.panel().facts(), layup, closed());
    }

    /** The holes to be closed: on a panel that waits none, nor one that scarcity leaves open. */
    public List<Closing> closings() {
        return verdict() == Verdict.HOLD ? List.of() : advice.closings().stream()
                .filter(c -> leftOut.stream().noneMatch(l -> l.patch().place().equals(c.opening().place()))).toList();
    }

    /** The holes that will be closed: on a held panel none, nor one for which no piece is left. */
    public Set<Place> closed() {
        Set<Place> open = leftOut.stream().map(l -> l.patch().place()).collect(Collectors.toSet());
        return verdict() == Verdict.HOLD ? Set.of() : advice.closings().stream()
                .filter(c -> c.piece().isPresent()).map(c -> c.opening().place()).filter(p -> !open.contains(p))
                .collect(Collectors.toSet());
    }

    /** The advice's verdict, unless sharing took the last layer away. */
    public Verdict verdict() {
        boolean laidAtAll = advice.verdict() == Verdict.COVER || advice.verdict() == Verdict.PATCH;
        if (leftOut.isEmpty() || !laidAtAll) {
            return advice.verdict();
        }
        if (layup.isEmpty()) {
            return Verdict.LEAVE_BARE;
        }
        return layup.layers().stream().allMatch(l -> l.layer() == unthrum.material.Layer.DAMPING)
                ? Verdict.PATCH : Verdict.COVER;
    }
}
