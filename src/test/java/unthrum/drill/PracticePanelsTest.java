package unthrum.drill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import unthrum.knowledge.RuleCard;
import unthrum.reasoning.Verdict;
import unthrum.survey.Survey;

@Label("A made panel")
class PracticePanelsTest {

    private static final int TRIES = 60;

    @Property(tries = 20 * TRIES)
    @Label("is read by the reader of every survey without a problem")
    void reads(@ForAll long number) {
        assertThat(PanelMaker.survey(number).panels()).hasSize(1);
    }

    @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE)
    @Label("is the same for the same number, with the same reasons in the same order")
    void sameNumber(@ForAll long number) {
        assertThat(PanelMaker.text(number)).isEqualTo(PanelMaker.text(number));
        assertThat(rules(Floors.PRACTICE.made(number))).isEqualTo(rules(Floors.PRACTICE.made(number)));
    }

    private static List<RuleCard> rules(Exercise exercise) {
        return exercise.choices().stream().map(Choice::rule).toList();
    }

    @Property(tries = 2 * TRIES, edgeCases = EdgeCasesMode.NONE)
    @Label("is marked right when answered as its case does, in typed words too")
    void ownAnswer(@ForAll long number) {
        Exercise exercise = Floors.PRACTICE.made(number);
        Answer own = exercise.ownAnswer();
        String typed = Spoken.of(own.outcome(), exercise);
        assertThat(Spoken.outcome(typed, exercise, "typed")).as(typed).isEqualTo(own.outcome());
        Mark mark = Mark.of(exercise, own);
        assertThat(mark.result()).isEqualTo(Result.RIGHT);
        assertThat(mark.bySubject().keySet()).isEqualTo(exercise.subjects()).isNotEmpty();
        assertThat(mark.bySubject().values()).containsOnly(Result.RIGHT);
    }

    @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE)
    @Label("is marked wrong for the reason as soon as one is named that does not hold, or none at all")
    void wrongReason(@ForAll long number) {
        Exercise exercise = Floors.PRACTICE.made(number);
        for (Choice choice : exercise.choices()) {
            Answer answer = exercise.ownAnswer();
            answer.why().add(exercise.number(choice));
            assertThat(Mark.of(exercise, answer).result())
                    .isEqualTo(choice instanceof Choice.True ? Result.RIGHT : Result.WRONG_REASON);
        }
        Answer silent = exercise.ownAnswer();
        silent.why().clear();
        assertThat(Mark.of(exercise, silent).result()).isEqualTo(Result.WRONG_REASON);
    }

    @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE)
    @Label("offers each reason once; those that do not hold speak nowhere in the case and miss a condition")
    void reasons(@ForAll long number) {
        Exercise exercise = Floors.PRACTICE.made(number);
        Set<RuleCard> speaking = new HashSet<>();
        exercise.advice().panel().judgements().forEach(j -> j.reasons().forEach(r -> speaking.add(r.rule())));
        assertThat(rules(exercise)).doesNotHaveDuplicates().hasSizeBetween(6, 16);
        for (Choice choice : exercise.choices()) {
            assertThat(speaking.contains(choice.rule())).isEqualTo(choice instanceof Choice.True);
            if (choice instanceof Choice.Untrue untrue) {
                assertThat(untrue.silence().failures()).isPositive();
            }
        }
    }

    @Example
    @Label("differs from its neighbours, and among two hundred every verdict and every zone comes up")
    void variety() {
        List<Survey> surveys = LongStream.range(0, 200).mapToObj(PanelMaker::survey).toList();
        assertThat(surveys).extracting(s -> s.panels().get(0)).doesNotHaveDuplicates();
        assertThat(surveys.stream().map(s -> s.panels().get(0).zone()).distinct())
                .hasSameSizeAs(UsualPanel.file().panels());
        assertThat(Floors.PRACTICE.made(0, 120)).extracting(e -> e.outcome().verdict()).contains(Verdict.values());
    }
}
