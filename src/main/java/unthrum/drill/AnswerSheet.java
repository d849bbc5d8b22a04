package unthrum.drill;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import unthrum.reading.Count;
import unthrum.reading.Places;
import unthrum.reading.Problem;
import unthrum.reading.Problems;
import unthrum.reading.Says;
import unthrum.reading.YamlReader;

/** A file of answers to known panels, in their order. */
@Says("Answers to practice panels, in their order")
record AnswerSheet(@Count(min = 1) List<Entry> answers) {

    /** The answer to one panel. */
    record Entry(@Says("What goes where, such as 'damping 1 2; insulation; seal a'") String gets,
                 @Says("The numbers of the reasons; 'none' where none holds") List<Integer> why) {
    }

    static int count(Path file) {
        return YamlReader.read(file, AnswerSheet.class).answers().size();
    }

    /** The answers of a file, or all its problems. */
    static List<Answer> read(Path file, List<Exercise> exercises) {
        List<Answer> answers = new ArrayList<>();
        YamlReader.read(file, AnswerSheet.class, (sheet, places) -> {
            List<Entry> entries = sheet.answers() == null ? List.of() : sheet.answers();
            if (places.sound("answers") && entries.size() != exercises.size()) {
                places.problem("answers", entries.size() + (entries.size() == 1 ? " answer" : " answers"),
                        "one for each of the " + exercises.size() + " panels", "--sheet shows the panels");
            }
            for (int i = 0; i < Math.min(entries.size(), exercises.size()); i++) {
                if (places.sound("answers[" + i + "]")) {
                    read(entries.get(i), exercises.get(i), "answers[" + i + "]", places, answers);
                }
            }
        });
        return List.copyOf(answers);
    }

    private static void read(Entry entry, Exercise exercise, String path, Places places, List<Answer> answers) {
        TreeSet<Integer> why = new TreeSet<>();
        for (int i = 0; i < entry.why().size(); i++) {
            String number = String.valueOf(entry.why().get(i));
            located(path + ".why[" + i + "]", places, () -> why.add(Spoken.reason(number, exercise, path)));
        }
        located(path + ".gets", places,
                () -> answers.add(new Answer(Spoken.outcome(entry.gets(), exercise, path), why)));
    }

    /** What is wrong with an answer, said of its place in the file. */
    private static void located(String path, Places places, Runnable reading) {
        try {
            reading.run();
        } catch (Problems e) {
            for (Problem problem : e.all()) {
                places.problem(path, problem.found(), problem.expected(), problem.remedy());
            }
        }
    }
}
