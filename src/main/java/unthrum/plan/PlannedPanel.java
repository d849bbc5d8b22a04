package unthrum.plan;

import java.util.List;
import unthrum.reasoning.Layup;
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
