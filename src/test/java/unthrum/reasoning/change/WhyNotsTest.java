package unthrum.reasoning.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import unthrum.facts.Bay;
import unthrum.facts.Opening;
import unthrum.facts.Place;
import unthrum.material.Layer;
import unthrum.reasoning.Considered;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.Verdict;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.Silence;
import unthrum.survey.PanelEntry;
import unthrum.survey.Survey;

@DisplayName("Why a panel does not get a layer")
class WhyNotsTest {

    private static final List<Path> FILES = Vehicles.FILES;

    @ParameterizedTest
    @FieldSource("FILES")
    @DisplayName("every layer on every panel is either laid or answered for, and what the answer names makes the difference")
    void everyLayer(Path file) {
        Survey survey = Vehicles.survey(file);
        try (PanelTrial trial = Vehicles.trial(survey)) {
            for (PanelEntry panel : survey.panels()) {
                PanelAdvice advice = trial.advise(panel);
                List<WhyNot> answers = new WhyNots(trial, advice).all();
                assertThat(answers.size() + Outcome.of(advice).spots().size()).as(panel.panel())
                        .isEqualTo(places(advice));
                answers.forEach(answer -> makesTheDifference(trial, advice, answer));
            }
        }
    }

    private static long places(PanelAdvice advice) {
        long whole = Layer.values().length - 3;
        return whole + advice.panel().facts().all(Bay.class).count() + advice.panel().facts().all(Opening.class).count();
    }

    /** Without what the answer names, the layer is no longer kept off for this reason. */
    static void makesTheDifference(PanelTrial trial, PanelAdvice advice, WhyNot answer) {
        String where = answer.layer() + " on " + answer.place();
        if (answer instanceof WhyNot.NobodyAsks none) {
            assertThat(none.silent()).as(where).isNotEmpty().allSatisfy(s -> assertThat(s.failures()).isPositive());
            assertThat(none.silent()).as(where).extracting(Silence::failures).isSorted();
        } else if (answer instanceof WhyNot.Outvoted outvoted) {
            assertThat(without(trial, advice, outvoted.want().vetoes()).wants())
                    .as(where).anyMatch(w -> w.want().equals(outvoted.want().want()) && w.stands());
        } else if (answer instanceof WhyNot.Waits waits) {
            assertThat(without(trial, advice, waits.holds()).verdict()).as(where).isNotEqualTo(Verdict.HOLD);
        } else if (answer instanceof WhyNot.Rejected rejected) {
            assertThat(rejected.candidates()).as(where).isNotEmpty();
            rejected.candidates().forEach(c -> assertThat(isRejected(without(trial, advice, c.rejectedBy()), c))
                    .as(where + ", " + c.material().material()).isFalse());
        } else if (answer instanceof WhyNot.Alone alone) {
            assertThat(without(trial, advice, alone.broken()).considered()).as(where)
                    .anyMatch(c -> c.material().layer() == alone.layer() && c.best().isPresent());
        } else if (answer instanceof WhyNot.Outdone outdone) {
            assertThat(outdone.with().layup().has(outdone.layer())).as(where).isTrue();
            assertThat(outdone.chosen().layup().has(outdone.layer())).as(where).isFalse();
            assertThat(outdone.with().worth()).as(where).isLessThanOrEqualTo(outdone.chosen().worth() + ALIKE);
        }
    }

    private static final double ALIKE = Vehicles.KNOWLEDGE.number("tell/alike");

    private static boolean isRejected(PanelAdvice advice, Considered candidate) {
        return advice.considered().stream().filter(c -> c.material().equals(candidate.material()))
                .anyMatch(c -> !c.rejectedBy().isEmpty());
    }

    /** The same case less some of its conclusions, judged again. */
    private static PanelAdvice without(PanelTrial trial, PanelAdvice advice, List<Judgement> some) {
        List<Judgement> rest = advice.panel().judgements().stream().filter(j -> !some.contains(j)).toList();
        return trial.advisor().tryOut(advice.panel().facts(), rest, List.of());
    }

    @ParameterizedTest
    @FieldSource("FILES")
    @DisplayName("a damping rule that stayed silent on a bay is traced on that bay, not on the one beside it")
    void onItsOwnBay(Path file) {
        Survey survey = Vehicles.survey(file);
        try (PanelTrial trial = Vehicles.trial(survey)) {
            for (PanelEntry panel : survey.panels()) {
                new WhyNots(trial, trial.advise(panel)).all().stream()
                        .filter(WhyNot.NobodyAsks.class::isInstance).map(WhyNot.NobodyAsks.class::cast)
                        .filter(n -> n.layer() == Layer.DAMPING).forEach(n -> n.silent().stream()
                                .flatMap(s -> s.conditions().stream()).flatMap(c -> c.found().stream())
                                .filter(Bay.class::isInstance).map(b -> ((Bay) b).place())
                                .forEach((Place bay) -> assertThat(bay).isEqualTo(n.place())));
            }
        }
    }
}
