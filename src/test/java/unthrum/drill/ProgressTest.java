package unthrum.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import unthrum.reading.Problems;

@DisplayName("Progress")
class ProgressTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 10);

    @ParameterizedTest(name = "{2} in box {0}, due in {1} days: box {3}, due in {4} days")
    @DisplayName("moves a subject from box to box")
    @CsvSource(textBlock = """
            1,  0, RIGHT,        2, 2
            2,  0, RIGHT,        3, 4
            3, -9, RIGHT,        4, 8
            4,  0, RIGHT,        5, 16
            5,  0, RIGHT,        5, 16
            3,  2, RIGHT,        3, 2
            4,  0, WRONG,        1, 1
            4,  0, WRONG_REASON, 1, 1
            5, 10, WRONG,        1, 1
            """)
    void boxes(int box, int due, Result result, int then, int dueThen) {
        Practised after = Boxes.after(new Practised("damping", 7, 4, 2, box, TODAY.plusDays(due)), result, TODAY);
        assertThat(after.box()).isEqualTo(then);
        assertThat(after.due()).isEqualTo(TODAY.plusDays(dueThen));
        assertThat(after.asked()).isEqualTo(8);
        assertThat(after.right() + after.wrongReason() + after.wrong()).isEqualTo(8);
    }

    @Test
    @DisplayName("begins every subject in the first box and due at once")
    void begins() {
        assertThat(Progress.NONE.isDue("heat", TODAY)).isTrue();
        Progress after = Progress.NONE.after(Map.of("heat", Result.RIGHT, "damping", Result.WRONG), TODAY);
        assertThat(after.practised()).containsExactly(new Practised("damping", 1, 0, 0, 1, TODAY.plusDays(1)),
                new Practised("heat", 1, 1, 0, 2, TODAY.plusDays(2)));
        assertThat(after.isDue("heat", TODAY.plusDays(1))).isFalse();
        assertThat(after.isDue("heat", TODAY.plusDays(2))).isTrue();
    }

    @Test
    @DisplayName("brings those panels first that practise most of what is due")
    void due() {
        List<Exercise> panels = List.of(Floors.dead(), Floors.rusty(), Floors.ringing());
        assertThat(first(panels, Progress.NONE)).isEqualTo(2);
        Progress known = Progress.NONE;
        for (String subject : List.of("barrier", "damping", "diagnosis", "heat", "insulation", "sealing",
                "wear")) {
            known = known.after(Map.of(subject, Result.RIGHT), TODAY);
        }
        assertThat(first(panels, known)).isEqualTo(1);
        assertThat(first(panels, known.after(Map.of("preparation", Result.WRONG), TODAY))).isZero();
    }

    private static int first(List<Exercise> panels, Progress progress) {
        return panels.indexOf(Practice.due(panels, 1, progress, TODAY).get(0));
    }

    @Nested
    @DisplayName("in its file")
    class Kept {

        @TempDir
        private Path folder;

        private Path write(String text) throws IOException {
            return Files.writeString(folder.resolve("mine.yaml"), text);
        }

        @Test
        @DisplayName("is nothing while there is no file, and reads back as it was added")
        void roundTrip() throws IOException {
            ProgressFile file = new ProgressFile(folder.resolve("deeper").resolve("mine.yaml"));
            assertThat(file.read()).isEqualTo(Progress.NONE);
            Exercise floor = Floors.ringing();
            Progress once = file.add(Mark.of(floor, floor.ownAnswer()), TODAY);
            assertThat(file.read()).isEqualTo(once);
            assertThat(once.practised()).extracting(Practised::subject).containsExactlyElementsOf(floor.subjects());
            Progress twice = file.add(Mark.of(floor, floor.ownAnswer()), TODAY.plusDays(30));
            assertThat(file.read()).isEqualTo(twice);
            assertThat(twice.practised()).allSatisfy(p -> assertThat(p.box()).isEqualTo(3));
            try (var files = Files.list(folder.resolve("deeper"))) {
                assertThat(files).containsExactly(file.path());
            }
        }

        @ParameterizedTest(name = "{0}: {1}")
        @DisplayName("says where it is damaged, and is left as it is")
        @CsvSource(delimiter = '|', textBlock = """
                [{subject: heat, asked: 1                                                        | mine.yaml:1:
                [{subject: heat, asked: -1, right: 0, wrong reason: 0, box: 1, due: 2026-01-01}] | mine.yaml:1:36:
                [{subject: heat, asked: 1, right: 0, wrong reason: 0, box: 6, due: 2026-01-01}]  | from 1 to 5
                [{subject: heat, asked: 1, right: 2, wrong reason: 0, box: 1, due: 2026-01-01}]  | mine.yaml:1:46:
                [{subject: heat, asked: 1, right: 0, wrong reason: 0, box: 1, due: soon}]        | a day such as
                3                                                                                | mine.yaml:1:12:
                """)
        void damaged(String entries, String says) throws IOException {
            String text = "practised: " + entries;
            ProgressFile file = new ProgressFile(write(text));
            Exercise floor = Floors.ringing();
            assertThatThrownBy(file::read).isInstanceOf(Problems.class).hasMessageContaining(says);
            assertThatThrownBy(() -> file.add(Mark.of(floor, floor.ownAnswer()), TODAY)).isInstanceOf(Problems.class);
            assertThat(file.path()).hasContent(text);
        }

        @Test
        @DisplayName("keeps answers that another run added meanwhile")
        void twoRuns() {
            ProgressFile mine = new ProgressFile(folder.resolve("mine.yaml"));
            ProgressFile other = new ProgressFile(folder.resolve("mine.yaml"));
            Exercise floor = Floors.ringing();
            mine.read();
            other.add(Mark.of(floor, floor.ownAnswer()), TODAY);
            mine.add(Mark.of(floor, floor.ownAnswer()), TODAY);
            assertThat(mine.read().practised()).allSatisfy(p -> assertThat(p.asked()).isEqualTo(2));
        }
    }
}
