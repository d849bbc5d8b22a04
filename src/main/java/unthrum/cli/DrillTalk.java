package unthrum.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.function.Function;
import unthrum.drill.Answer;
import unthrum.drill.Exercise;
import unthrum.drill.Mark;
import unthrum.drill.ProgressFile;
import unthrum.drill.Result;
import unthrum.drill.Spoken;
import unthrum.reading.Problems;
import unthrum.reasoning.change.Outcome;
import unthrum.report.DrillText;

/** Puts panels before an apprentice one by one; every answer is kept before its mark is shown. */
final class DrillTalk {

    private static final String STOP = "stop";

    private final Surroundings surroundings;
    private final DrillText text;
    private final ProgressFile kept;
    private final List<Exercise> exercises;
    private final List<Mark> marks = new ArrayList<>();
    private final BufferedReader typed;

    DrillTalk(Surroundings surroundings, DrillText text, ProgressFile kept, List<Exercise> exercises) {
        this.surroundings = surroundings;
        this.text = text;
        this.kept = kept;
        this.exercises = exercises;
        this.typed = new BufferedReader(new InputStreamReader(surroundings.in(), surroundings.charset()));
    }

    /** Only prints the panels. */
    void sheet() {
        surroundings.print(text.howTo());
        for (int i = 0; i < exercises.size(); i++) {
            show(i);
        }
    }

    /** Marks answers that are there already, and says whether all are right. */
    boolean mark(List<Answer> answers) {
        for (int i = 0; i < exercises.size(); i++) {
            show(i);
            surroundings.print(text.said(answers.get(i), exercises.get(i)));
            mark(exercises.get(i), answers.get(i));
        }
        return finished();
    }

    /** Asks until the panels or the answers are at an end, and says whether all answered are right. */
    boolean ask() throws IOException {
        surroundings.print(text.howTo());
        for (int i = 0; i < exercises.size(); i++) {
            Exercise exercise = exercises.get(i);
            show(i);
            Optional<Outcome> outcome = ask("What goes where? ", line -> Spoken.outcome(line, exercise, "this answer"));
            Optional<SortedSet<Integer>> why = outcome.isEmpty() ? Optional.empty()
                    : ask("Why? ", line -> Spoken.why(line, exercise, "this answer"));
            if (why.isEmpty()) {
                break;
            }
            mark(exercise, new Answer(outcome.get(), why.get()));
        }
        return finished();
    }

    /** Asks again until it is understood; nothing when no more is typed. */
    private <T> Optional<T> ask(String prompt, Function<String, T> reading) throws IOException {
        while (true) {
            surroundings.print(prompt);
            String line = typed.readLine();
            surroundings.print(surroundings.terminal() ? "" : (line == null ? "" : line) + "\n");
            if (line == null || line.trim().equals(STOP)) {
                return Optional.empty();
            }
            try {
                return Optional.of(reading.apply(line));
            } catch (Problems e) {
                e.all().forEach(problem -> surroundings.print(text.again(problem)));
            }
        }
    }

    private void show(int index) {
        surroundings.print(text.question(exercises.get(index), index + 1, exercises.size()));
    }

    private void mark(Exercise exercise, Answer answer) {
        Mark mark = Mark.of(exercise, answer);
        kept.add(mark, LocalDate.now(surroundings.clock()));
        marks.add(mark);
        surroundings.print(text.mark(mark));
    }

    private boolean finished() {
        surroundings.print(text.summary(marks, kept.path().toString()));
        return marks.stream().allMatch(m -> m.result() == Result.RIGHT);
    }
}
