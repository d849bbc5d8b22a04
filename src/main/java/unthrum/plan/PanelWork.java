package unthrum.plan;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import unthrum.facts.Duty;
import unthrum.facts.Duty.Work;
import unthrum.knowledge.Standing;
import unthrum.material.Layer;
import unthrum.reasoning.Layup;
import unthrum.reasoning.Verdict;
import unthrum.reasoning.engine.Judgement;

/**
 * The duties that a plan asks for on a panel, in the order of a job. Rules speak of work wherever a layer is wanted;
 * where none is laid in the end, only the work that stands by itself is left.
 */
public final class PanelWork {

    private static final Set<Work> BY_ITSELF = Set.of(Work.TEST_OLD_LAYER, Work.REPAIR, Work.CURE_RUST,
            Work.CLEAR_DRAIN, Work.REFIT_SHIELD, Work.FIX_RATTLE, Work.REMOVE_OLD_LAYER, Work.CLOSE_HOLE,
            Work.TELL_OWNER);

    private PanelWork() {
    }

    /** The duties that apply, each with the reasons that apply. */
    public static List<Judgement> of(PlannedPanel panel) {
        return inOrder(panel.asPlanned().duties().stream().flatMap(d -> applying(d, panel).stream()));
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

    private static Optional<Judgement> applying(Judgement duty, PlannedPanel panel) {
        boolean laid = !panel.layup().isEmpty() || panel.verdict() == Verdict.HOLD;
        if (!laid && !standsAlone(duty)) {
            return Optional.empty();
        }
        Judgement left = new Judgement(duty.conclusion(), duty.reasons().stream()
                .filter(r -> concerns(r.rule().subject(), panel)
                        || work(duty) == Work.TELL_OWNER && !r.rule().subject().equals("decoupling")).toList());
        return left.reasons().isEmpty() ? Optional.empty() : Optional.of(left);
    }

    /** Rules on one kind of layer concern a panel that gets it, or that may once the way is free. */
    private static boolean concerns(String subject, PlannedPanel panel) {
        Layup layup = panel.layup();
        return panel.verdict() == Verdict.HOLD || switch (subject) {
            case "damping" -> layup.has(Layer.DAMPING);
            case "barrier" -> layup.has(Layer.BARRIER);
            case "decoupling" -> layup.has(Layer.BARRIER);
            case "insulation" -> layup.has(Layer.INSULATION);
            default -> true;
        };
    }
}
