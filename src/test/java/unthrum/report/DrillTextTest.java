package unthrum.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import unthrum.Scenarios;
import unthrum.drill.Answer;
import unthrum.drill.Exercise;
import unthrum.drill.Mark;
import unthrum.drill.Practice;
import unthrum.drill.Practised;
import unthrum.drill.Progress;
import unthrum.drill.Spoken;
import unthrum.survey.Survey;
import unthrum.survey.SurveyReader;

@DisplayName("Practice as text")
class DrillTextTest {

    private static final Practice PRACTICE = new Practice(Scenarios.KNOWLEDGE, Scenarios.CATALOGUE);
    private static final DrillText TEXT = new DrillText(Scenarios.KNOWLEDGE, 80, Style.PLAIN);

    private static Exercise floor(String keys) {
        String text = """
                survey: A floor
                vehicle: {body: saloon, drive: petrol, use: daily}
                aims: [road drumming]
                panels:
                  - panel: floor
                    zone: floor
                    skin: {metal: steel, gauge: 0.8 mm}
                    near noise: road
                    clearance: 20 mm
                    clearance to: carpet
                    heat: none
                    reach: open
                    wet: dry
                    moving: none
                    covers: none
                    surface: {paint: sound, dirt: dust, rust: none, old: none}
                """ + keys.indent(4);
        Survey survey = SurveyReader.read("floor", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
        return PRACTICE.exercises(survey, survey.panels(), 1).get(0);
    }

    private static Mark mark(Exercise exercise, String gets) {
        return Mark.of(exercise, new Answer(Spoken.outcome(gets, exercise, "typed"), new TreeSet<>()));
    }

    @Test
    @DisplayName("draws ribs both ways, the bays in the order of their numbers, and fixings where they are known")
    void sketch() {
        Exercise floor = floor("""
                size: [960 mm, 560 mm]
                ribs:
                  - {kind: bead, runs: across, at: 480 mm, width: 40 mm}
                  - {kind: fold, runs: along, at: 280 mm, width: 80 mm}
                fixings:
                  - {kind: seat bolt, at: [900 mm, 40 mm]}
                  - {kind: bracket, at: [30 mm, 530 mm]}
                  - {kind: earth point}
                """);
        assertThat(PanelSketch.of(floor.panel(), floor.advice().panel().facts(), 24)).containsExactly(
                "+------------------------+",
                "|           #          o |",
                "|     1     #      2     |",
                "|           #            |",
                "|########################|",
                "|           #            |",
                "|     3     #      4     |",
                "|x          #            |",
                "+------------------------+",
                "1, 2 … bays, # rib, o seat bolt, x bracket");
    }

    @ParameterizedTest
    @ValueSource(ints = {40, 80, 120})
    @DisplayName("keeps within the columns, the drawing too, and shows no class names")
    void columns(int width) {
        DrillText text = new DrillText(Scenarios.KNOWLEDGE, width, Style.PLAIN);
        for (Exercise exercise : PRACTICE.made(300, 12)) {
            String all = text.howTo() + text.question(exercise, 1, 12) + text.mark(mark(exercise, "wear face"
                    + (exercise.openings().isEmpty() ? "" : "; seal a")));
            assertThat(all.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(width));
            assertThat(all).doesNotContain("null", "Optional", "[[", "@");
        }
    }

    @Test
    @DisplayName("tells a miss with the panel's numbers, the rule's id and what it teaches")
    void teaches() {
        Exercise floor = floor("size: [960 mm, 560 mm]\ntap: rings\nribs: none\nbehind: none\nopenings: none\n");
        String told = TEXT.mark(mark(floor, "nothing"));
        assertThat(told).startsWith("Wrong.\n").contains("Missing: damping on the panel.", "spans 560 mm",
                "[damping/ringing-bay]", "A long note means the metal keeps its movement.");
    }

    @Test
    @DisplayName("warns first of all of what must never be closed, and of dangers where work can hurt")
    void dangers() {
        Exercise floor = floor("""
                size: [960 mm, 560 mm]
                tap: rings
                openings: [{kind: drain, size: 8 mm, state: open}]
                behind: [fuel line]
                """);
        assertThat(TEXT.mark(mark(floor, "damping; seal a"))).contains("No closing of the drain:", "[sealing/drain]",
                "takes care:", "[safety/fuel-near]");
        assertThat(TEXT.mark(Mark.of(floor, floor.ownAnswer()))).startsWith("Right.\n").contains("[safety/fuel-near]");
    }

    @Test
    @DisplayName("reports to the master what is due, the soonest first, and what was never practised")
    void report() {
        LocalDate today = LocalDate.of(2026, 3, 10);
        Progress progress = new Progress(List.of(new Practised("damping", 5, 3, 1, 3, today.plusDays(4)),
                new Practised("heat", 2, 0, 1, 1, today)));
        assertThat(TEXT.report(progress, today, "mine.yaml")).contains("""
                subject  asked  right  wrong reason  wrong  box  due next
                heat         2      0             1      1    1  now
                damping      5      3             1      1    3  2026-03-14
                """, "Never practised yet: access, barrier, decoupling");
    }
}
