package unthrum.reasoning.change;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import unthrum.Scenarios;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.reasoning.engine.RuleEngine;
import unthrum.survey.PanelEntry;
import unthrum.survey.Survey;

/** The vehicles of the scenarios, and panels made from theirs by turning some of their facts. */
final class Vehicles {

    static final Knowledge KNOWLEDGE = Scenarios.KNOWLEDGE;
    static final Catalogue CATALOGUE = Scenarios.CATALOGUE;
    static final RuleEngine ENGINE = new RuleEngine(KNOWLEDGE);
    static final List<Path> FILES = Scenarios.files();
    private static final int MOST_TURNS = 3;

    private Vehicles() {
    }

    /** A panel of a vehicle, as it is in no scenario. */
    record Made(Survey survey, PanelEntry panel) {
        PanelTrial trial() {
            return new PanelTrial(ENGINE, CATALOGUE, survey);
        }

        @Override
        public String toString() {
            return survey.survey() + ": " + panel;
        }
    }

    static Survey survey(Path file) {
        return Scenarios.survey(file);
    }

    static PanelTrial trial(Survey survey) {
        return new PanelTrial(ENGINE, CATALOGUE, survey);
    }

    /** Any panel of any scenario with up to three of its facts turned to other values. */
    static Arbitrary<Made> panels() {
        return Arbitraries.randoms().map(Vehicles::made);
    }

    private static Made made(Random random) {
        Survey survey = survey(FILES.get(random.nextInt(FILES.size())));
        PanelEntry panel = survey.panels().get(random.nextInt(survey.panels().size()));
        try (PanelTrial trial = trial(survey)) {
            for (int turn = random.nextInt(MOST_TURNS + 1); turn > 0; turn--) {
                List<Lever> levers = trial.levers(panel);
                panel = turned(panel, levers.get(random.nextInt(levers.size())), random);
            }
        }
        return new Made(survey, panel);
    }

    /** The panel with a fact set to any other value; the panel as it is where there is none. */
    static PanelEntry turned(PanelEntry panel, Lever lever, Random random) {
        List<Object> values = values(lever);
        return values.isEmpty() ? panel : lever.set(panel, values.get(random.nextInt(values.size())));
    }

    /** Every other value that a fact may plausibly have. */
    static List<Object> values(Lever lever) {
        List<Object> values = new ArrayList<>(lever.words());
        if (lever.isScale()) {
            values.addAll(lever.scale(true));
            values.addAll(lever.scale(false));
        }
        return values;
    }
}
