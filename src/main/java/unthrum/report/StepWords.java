package unthrum.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import unthrum.job.JobCard;
import unthrum.job.Pause;
import unthrum.job.Step;
import unthrum.job.Task;
import unthrum.knowledge.Knowledge;
import unthrum.reading.Dimension;
import unthrum.report.JobSheet.Line;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.Reason;

/** The steps of a job card, told line by line. */
final class StepWords {

    private final JobCard card;
    private final Knowledge knowledge;
    private final Sentences sentences = new Sentences(PlaceNames.anywhere());

    StepWords(JobCard card, Knowledge knowledge) {
        this.card = card;
        this.knowledge = knowledge;
    }

    List<Line> lines(int index) {
        Step step = card.steps().get(index);
        List<Line> lines = new ArrayList<>();
        add(lines, "after", numbers(card.after(index)));
        add(lines, "beside", numbers(card.beside(index)));
        add(lines, "do", step.kind().does());
        advised(step.asks(), step).forEach(a -> add(lines, "work", a));
        advised(step.cautions(), step).forEach(c -> add(lines, "take care", c));
        add(lines, "tools", sentence(step.kind().tools().orElse(List.of())));
        add(lines, "uses", sentence(step.consumables()));
        step.supplies().warmth().ifPresent(t -> add(lines, "warmth", "Metal and pieces at "
                + Dimension.TEMPERATURE.show(t) + " or more; the data sheet overrides this."));
        step.pauses().forEach(p -> add(lines, "wait", pause(p)));
        return lines;
    }

    private static void add(List<Line> lines, String label, String text) {
        if (!text.isEmpty()) {
            lines.add(new Line(label, text));
        }
    }

    private static String sentence(List<String> words) {
        return words.isEmpty() ? "" : English.sentence(English.capital(English.and(words)));
    }

    /** 'Steps 2, 4 to 7 and 9.' */
    static String numbers(List<Integer> steps) {
        List<String> runs = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            int first = steps.get(i);
            while (i + 1 < steps.size() && steps.get(i + 1) == steps.get(i) + 1) {
                i++;
            }
            int last = steps.get(i);
            runs.add(first == last ? String.valueOf(first + 1) : first + 1 + (last == first + 1 ? " and " : " to ")
                    + (last + 1));
        }
        boolean one = steps.size() == 1;
        return runs.isEmpty() ? "" : (one ? "Step " : "Steps ") + (runs.size() == 1 ? runs.get(0)
                : String.join(", ", runs)) + ".";
    }

    /** What each rule advises, once for all places where it says the same. */
    private List<String> advised(List<Judgement> judgements, Step step) {
        Map<String, Set<String>> places = new LinkedHashMap<>();
        for (Judgement judgement : judgements) {
            for (Reason reason : judgement.reasons()) {
                String said = English.sentence(sentences.advice(reason)) + "|[" + reason.rule().id() + "]";
                Set<String> panels = places.computeIfAbsent(said, s -> new LinkedHashSet<>());
                String panel = judgement.conclusion().place().panel();
                panels.addAll(panel.isEmpty() ? List.of() : List.of(panel));
            }
        }
        Set<String> all = step.tasks().stream().map(Task::panel).collect(Collectors.toSet());
        return places.entrySet().stream().map(e -> e.getKey().replace("|", on(e.getValue(), all) + " ")).toList();
    }

    private static String on(Set<String> panels, Set<String> all) {
        boolean everywhere = panels.isEmpty() || panels.containsAll(all) && !all.isEmpty();
        return everywhere ? "" : " On " + English.and(List.copyOf(panels)) + ".";
    }

    private static String pause(Pause pause) {
        String until = "Until " + pause.until();
        if (pause.least().isEmpty()) {
            return until + ".";
        }
        double least = pause.least().getAsDouble();
        String time = pause.most().isPresent() ? Durations.between(least, pause.most().getAsDouble())
                : "at least " + Durations.exact(least);
        return until + ": " + time + "; the label rules (" + English.and(pause.sources()) + ").";
    }
}
