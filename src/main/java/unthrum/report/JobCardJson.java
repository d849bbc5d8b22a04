package unthrum.report;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import unthrum.facts.Duty;
import unthrum.job.JobCard;
import unthrum.job.Pause;
import unthrum.job.Step;
import unthrum.job.StepKind;
import unthrum.job.Task;
import unthrum.pieces.CutPlan;
import unthrum.reading.Dimension;
import unthrum.reading.Words;
import unthrum.reasoning.Closing;
import unthrum.effect.Laid;
import unthrum.reasoning.engine.Judgement;

/** A job card as JSON, complete, by the published schema {@code unthrum/jobcard.schema.json}. */
public final class JobCardJson {

    /** Goes up when a program that reads the JSON would have to change. */
    static final int FORMAT = 1;

    private JobCardJson() {
    }

    /** @param cuts the layouts by which the pieces are numbered */
    public static String of(JobCard card, CutPlan cuts) {
        PieceNumbers pieces = new PieceNumbers(cuts);
        return Json.write(Json.object("format", FORMAT, "kind", "jobcard", "survey", card.plan().survey().survey(),
                "labour", time(card.labour()), "soonest", time(card.soonest()),
                "steps", IntStream.range(0, card.steps().size()).mapToObj(i -> step(card, i, pieces)).toList()));
    }

    private static Map<String, Object> step(JobCard card, int index, PieceNumbers pieces) {
        Step step = card.steps().get(index);
        StepKind kind = step.kind();
        Sentences sentences = new Sentences(PlaceNames.anywhere());
        return Json.object("number", index + 1, "step", kind.step(), "stage", Words.of(kind.stage()),
                "area", step.area().map(a -> a.area()), "does", kind.does(), "source", kind.source(),
                "after", card.after(index).stream().map(b -> after(card, b, index)).toList(),
                "beside", card.beside(index).stream().map(b -> b + 1).toList(),
                "people", step.people(), "labour", time(step.labour()), "labourSource", kind.labour().source(),
                "tools", kind.tools().orElse(List.of()), "consumables", step.consumables(),
                "warmth", optional(step.supplies().warmth(), Dimension.TEMPERATURE),
                "waits", step.pauses().stream().map(JobCardJson::pause).toList(),
                "panels", step.tasks().stream().map(t -> task(t, pieces)).toList(),
                "questions", card.questions(step).stream().map(q -> JsonValues.judgement(q, sentences)).toList(),
                "duties", step.asks().stream().map(JobCardJson::duty).toList(),
                "cautions", step.cautions().stream().map(c -> JsonValues.judgement(c, sentences)).toList());
    }

    private static Map<String, Object> after(JobCard card, int before, int then) {
        return Json.object("step", before + 1, "rules", card.edges().stream()
                .filter(e -> e.before() == before && e.then() == then).map(e -> e.rule().order()).distinct().toList());
    }

    private static Map<String, Object> pause(Pause pause) {
        return Json.object("until", pause.until(), "least", optional(pause.least(), Dimension.TIME),
                "most", optional(pause.most(), Dimension.TIME), "sources", pause.sources());
    }

    private static Map<String, Object> task(Task task, PieceNumbers pieces) {
        return Json.object("panel", task.panel(), "parts", task.parts(),
                "layers", task.layers().stream().map(l -> layer(l, pieces.of(task.panel(), l.material()))).toList(),
                "closes", task.closings().stream().map(JobCardJson::closing).toList());
    }

    private static Map<String, Object> layer(Laid laid, List<String> pieces) {
        return Json.object("material", laid.material().material(), "layer", laid.layer().word(),
                "pieces", pieces,
                "area", JsonValues.quantity(laid.area(), Dimension.AREA),
                "mass", JsonValues.quantity(laid.mass(), Dimension.MASS));
    }

    private static Map<String, Object> closing(Closing closing) {
        return Json.object("opening", closing.opening().place().part(), "count", closing.count(),
                "piece", closing.piece().map(m -> m.material()));
    }

    private static Map<String, Object> duty(Judgement asked) {
        return Json.object("work", Words.of(((Duty) asked.conclusion()).work()),
                "place", JsonValues.place(asked.conclusion().place()), "rule", asked.reasons().get(0).rule().id());
    }

    private static Map<String, Object> time(double seconds) {
        return JsonValues.quantity(seconds, Dimension.TIME);
    }

    private static Map<String, Object> optional(OptionalDouble value, Dimension dimension) {
        return value.isPresent() ? JsonValues.quantity(value.getAsDouble(), dimension) : null;
    }
}
