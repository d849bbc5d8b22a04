package unthrum.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import unthrum.facts.Caution;
import unthrum.job.JobCard;
import unthrum.job.Pause;
import unthrum.job.Step;
import unthrum.job.Task;
import unthrum.knowledge.Knowledge;
import unthrum.knowledge.Source;
import unthrum.plan.PanelWork;
import unthrum.reading.Dimension;
import unthrum.reading.Words;
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
        advised(card.questions(step), step).forEach(q -> add(lines, "measure", q));
        advised(holds(step), step).forEach(h -> add(lines, "waits", h));
        if (step.kind().decides()) {
            afterwards(step).forEach(a -> add(lines, "afterwards", a));
        } else {
            advised(step.asks(), step).forEach(a -> add(lines, "work", a));
        }
        cautions(lines, index);
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
            int end = i;
            while (end + 1 < steps.size() && steps.get(end + 1) == steps.get(end) + 1) {
                end++;
            }
            i = end - i < 2 ? i : end;
            int last = steps.get(i);
            runs.add(first == last ? String.valueOf(first + 1) : first + 1 + " to " + (last + 1));
        }
        return runs.isEmpty() ? "" : (steps.size() == 1 ? "Step " : "Steps ") + English.and(runs) + ".";
    }

    private String source(String key) {
        return Source.MARKS.contains(key) ? key.replace('-', ' ') : knowledge.sourceTitle(key);
    }

    /** Why the panels of the step wait, where it is about that. */
    private List<Judgement> holds(Step step) {
        return !step.kind().decides() ? List.of() : step.tasks().stream()
                .flatMap(t -> card.plan().panel(t.panel()).orElseThrow().advice().holds().stream()).toList();
    }

    /** What the rules ask for on each panel once it is free. */
    private static List<String> afterwards(Step step) {
        Map<String, Set<String>> works = new LinkedHashMap<>();
        step.asks().forEach(a -> works.computeIfAbsent(a.conclusion().place().panel(), p -> new LinkedHashSet<>())
                .add(Words.of(PanelWork.work(a))));
        return works.entrySet().stream().map(e -> e.getKey() + ": " + String.join(", ", e.getValue()) + ".").toList();
    }

    /** In full where a danger is told first or belongs to a panel; those of the whole job by name after that. */
    private void cautions(List<Line> lines, int index) {
        Step step = card.steps().get(index);
        List<Judgement> known = step.cautions().stream().filter(c -> c.conclusion().place().isVehicle())
                .filter(c -> first(c) < index).toList();
        add(lines, "take care", known.isEmpty() ? "" : English.capital(English.and(known.stream()
                .map(c -> Words.of(((Caution) c.conclusion()).danger())).distinct().toList())) + ": as in step "
                + (first(known.get(0)) + 1) + ".");
        advised(step.cautions().stream().filter(c -> !known.contains(c)).toList(), step)
                .forEach(c -> add(lines, "take care", c));
    }

    /** The step that tells of a danger first. */
    private int first(Judgement caution) {
        return IntStream.range(0, card.steps().size()).filter(i -> card.steps().get(i).cautions().stream()
                .anyMatch(c -> c.conclusion().equals(caution.conclusion()))).findFirst().orElseThrow();
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

    private String pause(Pause pause) {
        String until = "Until " + pause.until();
        if (pause.least().isEmpty()) {
            return until + ".";
        }
        double least = pause.least().getAsDouble();
        String time = pause.most().isPresent() ? Durations.between(least, pause.most().getAsDouble())
                : "at least " + Durations.exact(least);
        String sources = English.and(pause.sources().stream().map(this::source).toList());
        return until + ": " + time + " (" + sources + ").";
    }
}
