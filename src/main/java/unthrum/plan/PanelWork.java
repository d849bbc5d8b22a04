package unthrum.plan;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import unthrum.facts.Duty;
import unthrum.facts.Duty.Work;
import unthrum.knowledge.Standing;
import unthrum.reasoning.Verdict;
import unthrum.reasoning.engine.Judgement;

/**
 * The duties that a plan asks for on a panel, in the order of a job. Rules speak of work wherever a layer is wanted;
 * where none is laid in the end, only the work that stands by itself is left.
 */
public final class PanelWork {

    private static final Set<Work> BY_ITSELF = Set.of(Work.TEST_OLD_LAYER, Work.REPAIR, Work.CURE_RUST,
            Work.REPAINT, Work.CLEAR_DRAIN, Work.REFIT_SHIELD, Work.FIX_RATTLE, Work.REMOVE_OLD_LAYER, Work.CLOSE_HOLE,
            Work.TELL_OWNER);

    private PanelWork() {
    }

    /** The duties that apply, each with the reasons that apply. */
    public static List<Judgement> of(PlannedPanel panel) {
        boolean laid = !panel.layup().isEmpty() || panel.verdict() == Verdict.HOLD;
        return inOrder(panel.asPlanned().duties().stream().filter(d -> laid || standsAlone(d)));
    }

    public static List<Judgement> inOrder(Stream<Judgement> duties) {
        return duties.sorted(java.util.Comparator.comparing(PanelWork::work)).toList();
    }

    public static Work work(Judgement duty) {
        return ((Duty) duty.conclusion()).work();
    }

    /** Whether the panel itself asks for it, layer or none; a vent that somebody closed is opened again in any case. */
    public static boolean standsAlone(Judgement duty) {
        return BY_ITSELF.contains(work(duty)) || work(duty) == Work.KEEP_OPEN && duty.standing() == Standing.SAFETY;
    }
}
