package unthrum.reasoning.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import unthrum.reasoning.change.Vehicles.Made;
import unthrum.survey.PanelEntry;
import unthrum.survey.Survey;

@Label("What to measure next")
class UnknownsTest {

    @Provide
    Arbitrary<Made> panels() {
        return Vehicles.panels();
    }

    @Property(tries = 10, shrinking = ShrinkingMode.OFF)
    @Label("an answer takes its question away, whatever it is")
    void answered(@ForAll("panels") Made made, @ForAll Random random) {
        try (PanelTrial trial = made.trial()) {
            Unknowns unknowns = new Unknowns(trial);
            for (Unknown unknown : unknowns.of(made.panel())) {
                List<Object> answers = Vehicles.values(unknown.lever());
                PanelEntry answered = unknown.lever().set(made.panel(), answers.get(random.nextInt(answers.size())));
                assertThat(unknowns.of(answered)).extracting(u -> u.lever().name())
                        .doesNotContain(unknown.lever().name());
            }
        }
    }

    @Property(tries = 6, shrinking = ShrinkingMode.OFF)
    @Label("a fact that need not be measured changes nothing at any of its plausible values")
    void idle(@ForAll("panels") Made made, @ForAll Random random) {
        try (PanelTrial trial = made.trial()) {
            Outcome today = Outcome.of(trial.advise(made.panel()));
            for (Unknown unknown : new Unknowns(trial).of(made.panel())) {
                if (!unknown.decides()) {
                    List<Object> answers = Vehicles.values(unknown.lever());
                    Object answer = answers.get(random.nextInt(answers.size()));
                    assertThat(Outcome.of(trial.advise(unknown.lever().set(made.panel(), answer))))
                            .as("%s = %s", unknown.lever().name(), answer).isEqualTo(today);
                }
            }
        }
    }

    @Property(tries = 3, shrinking = ShrinkingMode.OFF)
    @Label("danger comes first, then what the panels get")
    void ranked(@ForAll Random random) {
        Path file = Vehicles.FILES.get(random.nextInt(Vehicles.FILES.size()));
        Survey survey = Vehicles.survey(file);
        try (PanelTrial trial = Vehicles.trial(survey)) {
            assertThat(new Unknowns(trial).of(survey)).extracting(Unknown::stakes)
                    .isSortedAccordingTo(Stakes.WEIGHTIEST).isNotEmpty();
        }
    }
}
