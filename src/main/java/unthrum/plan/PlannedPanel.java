package unthrum.plan;

import java.util.List;
import unthrum.reasoning.Layup;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.Verdict;

/** One panel of the plan: the advice on it, and what of the advised layup there is enough mass, money and stock for. */
public record PlannedPanel(PanelAdvice advice, Layup layup, List<LeftOut> leftOut) {

    public String name() {
        return advice.name();
    }

    /** The advice's verdict, unless sharing took the last layer away. */
    public Verdict verdict() {
        if (leftOut.isEmpty()) {
            return advice.verdict();
        }
        if (layup.isEmpty()) {
            return Verdict.LEAVE_BARE;
        }
        return layup.layers().stream().allMatch(l -> l.layer() == unthrum.material.Layer.DAMPING)
                ? Verdict.PATCH : Verdict.COVER;
    }
}
