package unthrum.report;

import java.util.ArrayList;
import java.util.List;
import unthrum.job.JobCard;
import unthrum.job.Stage;
import unthrum.job.Step;
import unthrum.job.Task;
import unthrum.knowledge.Knowledge;
import unthrum.pieces.CutPlan;
import unthrum.plan.Plan;

/**
 * A job card in words, as a value that text and page render alike.
 *
 * @param summary what the job adds up to, and on what that rests
 */
public record JobSheet(String title, List<String> summary, List<Section> sections) {

    private static final String FLOOR = "The floor, last";

    /** The steps of one stage. */
    public record Section(String title, List<Entry> entries) {
    }

    /**
     * One step.
     *
     * @param number counted from 1
     * @param effort how long and how many people
     * @param lines  what to do and to mind
     * @param boxes  what to tick, with room for who and when
     */
    public record Entry(int number, String title, String effort, List<Line> lines, List<Box> boxes) {
    }

    /** A labelled paragraph. */
    public record Line(String label, String text) {
    }

    /** One thing to tick off. */
    public record Box(String panel, String what) {
    }

    /** @param cuts the layouts by which the pieces are numbered */
    public static JobSheet of(JobCard card, CutPlan cuts, Knowledge knowledge) {
        PieceNumbers pieces = new PieceNumbers(cuts);
        List<Section> sections = new ArrayList<>();
        StepWords words = new StepWords(card, knowledge);
        for (int i = 0; i < card.steps().size(); i++) {
            Step step = card.steps().get(i);
            String title = stage(step, sections);
            if (sections.isEmpty() || !sections.get(sections.size() - 1).title().equals(title)) {
                sections.add(new Section(title, new ArrayList<>()));
            }
            sections.get(sections.size() - 1).entries().add(new Entry(i + 1, English.capital(step.name()), effort(step),
                    words.lines(i), boxes(step, card.plan(), pieces)));
        }
        return new JobSheet(card.plan().survey().survey() + ": the order of work", summary(card),
                sections);
    }

    private static List<String> summary(JobCard card) {
        if (card.steps().isEmpty()) {
            return List.of("Nothing is to be done on this vehicle.");
        }
        return List.of(English.count(card.steps().size(), "step") + ", about " + Durations.hours(card.labour())
                + " of work in all; with hands enough and the shortest waits the job takes "
                + Durations.rough(card.soonest()) + " from the first step to the last.",
                "Times of work are typical figures from memory, by panel and square metre, and no promise; waits are "
                + "overridden by the label of the product at hand. Pieces go by their numbers on the drawings that "
                + "'unthrum cut' makes. Steps are taken in the order of their numbers; "
                + "those named as side by side may run at the same time.");
    }

    /** @param before the sections so far: what is fitted after the floor lies over it */
    private static String stage(Step step, List<Section> before) {
        return switch (step.kind().stage()) {
            case MAKE_READY -> "Making ready";
            case CLEAN -> "Cleaning";
            case CUT -> "Pieces";
            case FIT -> !step.kind().isDoneInside() && before.stream().anyMatch(s -> s.title().equals(FLOOR))
                    ? "Over the finished floor" : step.isUnderfoot() ? FLOOR : "Fitting, from the top down";
            case PROVE -> "Proof";
        };
    }

    private static String effort(Step step) {
        String people = step.people() > 1 ? ", " + step.people() + " people" : "";
        return (step.labour() > 0 ? "about " + Durations.rough(step.labour()) : "") + people;
    }

    private static List<Box> boxes(Step step, Plan plan, PieceNumbers pieces) {
        if (!step.kind().isPanelByPanel() || step.tasks().isEmpty()) {
            return List.of(new Box("done", ""));
        }
        return step.tasks().stream().map(t -> new Box(t.panel(), step.kind().stage() == Stage.CUT
                ? pieces.words(t.panel()) : what(t, step.kind().decides(), plan, pieces))).toList();
    }

    private static String what(Task task, boolean decides, Plan plan, PieceNumbers pieces) {
        List<String> what = new ArrayList<>();
        LayupWords words = new LayupWords(plan.panel(task.panel()).orElseThrow().advice().panel().facts());
        task.layers().forEach(l -> what.add(words.piece(l) + ", " + pieces.words(task.panel(), l.material())));
        task.closings().forEach(c -> what.add(words.plug(c)));
        List<String> parts = task.parts().stream().filter(p -> task.closings().stream()
                .noneMatch(c -> c.opening().place().part().equals(p))).toList();
        if (!parts.isEmpty() && task.layers().isEmpty() && !decides) {
            what.add(English.andNumbered(parts));
        }
        return String.join("; ", what);
    }
}
