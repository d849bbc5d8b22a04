package unthrum.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import unthrum.facts.Duty.Work;
import unthrum.facts.Opening;
import unthrum.facts.Room;
import unthrum.job.JobCard;
import unthrum.job.Step;
import unthrum.knowledge.Standing;
import unthrum.material.Layer;
import unthrum.pieces.CutPlan;
import unthrum.plan.PanelWork;
import unthrum.plan.PlannedPanel;
import unthrum.reading.Words;
import unthrum.effect.Laid;
import unthrum.effect.Patch;
import unthrum.reasoning.engine.Judgement;
import unthrum.survey.Face;
import unthrum.survey.OpeningKind;

/**
 * The first state of an as-built file: all that the plan lays and asks for stands in it as a remark, and everything is
 * open, so that nothing is claimed. Without its marks each remark is an entry that can be filled in.
 */
public final class AsBuiltStarter {

    /** What stands before an entry that is not claimed yet. */
    static final String MARK = "#: ";

    private static final String HEAD = """
            # The as-built file of the job below, written from its plan on the first day. Nothing in it is claimed: an
            # audit finds all of it unproven. What is ticked on the job card goes in here: where something is done,
            # strike the 'unknown' above the lines marked '#:', take the marks off those that are true, and replace
            # every other 'unknown' in them. Behind each piece of work stands the step of the card,
            # behind each layer the numbers of its pieces.
            """;

    private final JobCard card;
    private final PieceNumbers pieces;
    private final StringBuilder text = new StringBuilder();

    private AsBuiltStarter(JobCard card, CutPlan cuts) {
        this.card = card;
        this.pieces = new PieceNumbers(cuts);
    }

    /**
     * @param cuts   the layouts by which the pieces are numbered
     * @param survey the survey's file as seen from the new one
     */
    public static String of(JobCard card, CutPlan cuts, String survey) {
        return new AsBuiltStarter(card, cuts).text(survey);
    }

    private String text(String survey) {
        text.append(HEAD).append("# ").append(card.plan().survey().survey().replaceAll("\\R", " ")).append('\n');
        line(0, "of: " + quoted(survey));
        line(0, "finished: unknown");
        line(0, "who: unknown");
        done(0, card.plan().duties(), "");
        line(0, "panels:");
        card.plan().panels().forEach(this::panel);
        return text.toString();
    }

    private void panel(PlannedPanel panel) {
        text.append('\n');
        line(2, "- panel: " + quoted(panel.name()));
        line(4, "who: unknown");
        line(4, "when: unknown");
        line(4, "layers: unknown");
        if (panel.layup().isEmpty()) {
            line(4, MARK + "none: the plan lays nothing here (" + Words.of(panel.verdict()) + ")");
        }
        panel.layup().layers().forEach(l -> layer(panel.name(), l));
        List<Judgement> duties = panel.layup().isEmpty() ? PanelWork.of(panel) : panel.asPlanned().duties();
        done(4, duties, panel.name());
        trials(panel, duties.stream().map(PanelWork::work).collect(Collectors.toSet()));
        closed(panel, duties);
    }

    private void layer(String panel, Laid laid) {
        Map<String, List<Patch>> byShare = new LinkedHashMap<>();
        laid.patches().forEach(p -> byShare.computeIfAbsent(share(p), s -> new ArrayList<>()).add(p));
        byShare.forEach((share, patches) -> {
            List<String> bays = patches.stream().map(p -> p.place().part()).filter(b -> !b.isEmpty()).toList();
            String at = bays.isEmpty() ? "" : ", at: [" + String.join(", ", bays) + "]";
            line(4, MARK + "- {material: " + laid.material().material() + at + ", coverage: " + share
                    + ", over: unknown}  # "
                    + pieces.words(panel, laid.material()));
        });
    }

    /** To a tenth of a per cent, rounded down, so that what is laid never weighs more than what was planned. */
    private static String share(Patch patch) {
        return String.format(Locale.ROOT, "%.1f %%", Math.floor(patch.coverage() * 1000 + 1e-6) / 10).replace(".0 %", " %");
    }

    private void done(int indent, List<Judgement> duties, String panel) {
        if (!duties.isEmpty()) {
            line(indent, "done: unknown");
        }
        Map<Work, List<Judgement>> byWork = PanelWork.inOrder(duties.stream()).stream()
                .collect(Collectors.groupingBy(PanelWork::work, LinkedHashMap::new, Collectors.toList()));
        byWork.forEach((work, asked) -> {
            Set<String> parts = asked.stream().map(j -> j.conclusion().place().part()).filter(p -> !p.isEmpty())
                    .collect(Collectors.toCollection(LinkedHashSet::new));
            String remark = Stream.of(English.andNumbered(List.copyOf(parts)), steps(work, panel))
                    .filter(s -> !s.isEmpty()).collect(Collectors.joining("; "));
            line(indent, MARK + "- {work: " + Words.of(work) + shown(work, asked)
                    + ", when: unknown}  # " + remark);
        });
    }

    /** What the audit wants to see of it beside a name and a day. */
    private static String shown(Work work, List<Judgement> asked) {
        boolean weighty = work == Work.PHOTOGRAPH || work != Work.TELL_OWNER
                && asked.stream().anyMatch(j -> j.standing().compareTo(Standing.PRACTICE) < 0);
        return work == Work.ROAD_TEST ? ", measured: unknown" : weighty ? ", photo: unknown" : "";
    }

    /** The steps of the card that meet a piece of work on a panel, or on the job as a whole. */
    private String steps(Work work, String panel) {
        List<Integer> steps = IntStream.range(0, card.steps().size())
                .filter(i -> meets(card.steps().get(i), work, panel)).boxed().toList();
        return StepWords.numbers(steps).toLowerCase(Locale.ROOT).replace(".", "");
    }

    private static boolean meets(Step step, Work work, String panel) {
        return step.asks().stream().anyMatch(a -> PanelWork.work(a) == work
                && a.conclusion().place().panel().equals(panel));
    }

    /** What is tried at the end, with its outcome. */
    private void trials(PlannedPanel panel, Set<Work> works) {
        var facts = panel.advice().panel().facts();
        trial(panel.layup().has(Layer.DAMPING), "tap after");
        trial(!panel.layup().isEmpty() && facts.the(Room.class).to() != Face.NOTHING, "trim");
        trial(works.contains(Work.CHECK_TRAVEL) || works.contains(Work.KEEP_TRAVEL), "travel");
        trial(facts.all(Opening.class).anyMatch(o -> o.kind() == OpeningKind.DRAIN), "drains");
    }

    private void closed(PlannedPanel panel, List<Judgement> duties) {
        List<String> holes = Stream.concat(panel.closings().stream().map(c -> c.opening().place().part()),
                duties.stream().filter(d -> PanelWork.work(d) == Work.CLOSE_HOLE)
                        .map(d -> d.conclusion().place().part())).distinct().toList();
        trial(!holes.isEmpty(), "closed");
        holes.forEach(hole -> line(4, MARK + "- " + hole));
    }

    private void trial(boolean asked, String key) {
        if (asked) {
            line(4, key + ": unknown");
        }
    }

    private void line(int indent, String line) {
        text.append(" ".repeat(indent)).append(line).append('\n');
    }

    private static String quoted(String word) {
        return "\"" + word.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
