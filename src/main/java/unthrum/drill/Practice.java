package unthrum.drill;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.reasoning.change.PanelTrial;
import unthrum.reasoning.engine.RuleEngine;
import unthrum.survey.PanelEntry;
import unthrum.survey.Survey;

/** Sets the panels that an apprentice is to judge. */
public final class Practice {

    /** Of so many panels those are taken that practise most of what is due. */
    private static final int LOOKED_AT = 12;

    private final Knowledge knowledge;
    private final Catalogue catalogue;
    private final RuleEngine engine;

    public Practice(Knowledge knowledge, Catalogue catalogue) {
        this.knowledge = knowledge;
        this.catalogue = catalogue;
        this.engine = new RuleEngine(knowledge);
    }

    /** The panels with the numbers from the seed on. */
    public List<Exercise> made(long seed, int count) {
        List<Exercise> exercises = new ArrayList<>();
        for (long number = seed; number < seed + count; number++) {
            exercises.add(made(number));
        }
        return exercises;
    }

    /** The panel with that number; always the same. */
    public Exercise made(long number) {
        Survey survey = PanelMaker.survey(number);
        return exercises(survey, survey.panels(), number).get(0);
    }

    /** Panels of a survey with their reasons, in the order given. */
    public List<Exercise> exercises(Survey survey, List<PanelEntry> panels, long seed) {
        try (PanelTrial trial = new PanelTrial(engine, catalogue, survey)) {
            return panels.stream().map(panel -> Exercise.of(trial, survey, panel, knowledge, seed)).toList();
        }
    }

    /** So many of a survey's panels, shuffled by the seed. */
    public List<Exercise> of(Survey survey, long seed, int count) {
        List<PanelEntry> panels = new ArrayList<>(survey.panels());
        Collections.shuffle(panels, new Random(seed));
        return exercises(survey, panels.subList(0, Math.min(count, panels.size())), seed);
    }

    /** So many of the panels, those first that practise most of what is due and does not come up yet. */
    public static List<Exercise> due(List<Exercise> panels, int count, Progress progress, LocalDate today) {
        List<Exercise> left = new ArrayList<>(panels);
        List<Exercise> set = new ArrayList<>();
        Set<String> covered = new HashSet<>();
        while (set.size() < count && !left.isEmpty()) {
            Predicate<String> wanted = s -> progress.isDue(s, today) && !covered.contains(s);
            Exercise best = left.get(0);
            for (Exercise other : left) {
                best = gain(other, wanted) > gain(best, wanted) ? other : best;
            }
            covered.addAll(best.subjects());
            set.add(best);
            left.remove(best);
        }
        return set;
    }

    private static long gain(Exercise exercise, Predicate<String> wanted) {
        return exercise.subjects().stream().filter(wanted).count();
    }

    /** How many panels to look at in order to find so many that practise what is due. */
    public static int lookedAt(int count) {
        return Math.max(LOOKED_AT, 2 * count);
    }

    /** How many panels a file answers. */
    public static int answered(Path file) {
        return AnswerSheet.count(file);
    }

    /** The answers of a file to these panels, or all its problems. */
    public static List<Answer> answers(Path file, List<Exercise> exercises) {
        return AnswerSheet.read(file, exercises);
    }
}
