package unthrum.reasoning.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import unthrum.facts.Place;
import unthrum.facts.Want;
import unthrum.knowledge.RuleCard;
import unthrum.material.Layer;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.change.Vehicles.Made;
import unthrum.survey.PanelEntry;

@Label("Why any panel does not get a layer")
class WhyNotsOnAnyPanelTest {

    @Provide
    Arbitrary<Made> panels() {
        return Vehicles.panels();
    }

    @Property(tries = 20, shrinking = ShrinkingMode.OFF)
    @Label("what an answer names makes the difference")
    void onAnyPanel(@ForAll("panels") Made made) {
        try (PanelTrial trial = made.trial()) {
            PanelAdvice advice = trial.advise(made.panel());
            new WhyNots(trial, advice).all().forEach(answer -> WhyNotsTest.makesTheDifference(trial, advice, answer));
        }
    }

    @Property(tries = 20, shrinking = ShrinkingMode.OFF)
    @Label("whatever fact is turned, a rule misses nothing any more exactly where it then asks for the layer")
    void missesNothingWhereItSpeaks(@ForAll("panels") Made made, @ForAll Random random) {
        try (PanelTrial trial = made.trial()) {
            for (Lever lever : new Changes(trial, made.panel()).levers()) {
                PanelEntry turned = Vehicles.turned(made.panel(), lever, random);
                PanelAdvice advice = trial.advise(turned);
                for (Layer layer : List.of(Layer.DAMPING, Layer.BARRIER, Layer.INSULATION, Layer.ABSORBER)) {
                    trial.wanting(layer).forEach(rule -> assertThat(missesNothing(trial, advice, rule))
                            .as("%s on %s", rule.id(), turned).isEqualTo(asks(advice, layer, rule)));
                }
            }
        }
    }

    private static boolean missesNothing(PanelTrial trial, PanelAdvice advice, RuleCard rule) {
        return trial.silences(rule.name(), advice.panel().facts(), Place.of(advice.name())).get(0).failures() == 0;
    }

    private static boolean asks(PanelAdvice advice, Layer layer, RuleCard rule) {
        return advice.panel().own(Want.class).stream().filter(j -> ((Want) j.conclusion()).layer() == layer)
                .flatMap(j -> j.reasons().stream()).anyMatch(r -> r.rule().equals(rule));
    }
}
