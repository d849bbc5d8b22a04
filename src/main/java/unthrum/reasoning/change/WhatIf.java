package unthrum.reasoning.change;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import unthrum.facts.Conclusion;
import unthrum.reading.Problems;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.change.Change.Turn;
import unthrum.reasoning.engine.Judgement;
import unthrum.survey.PanelEntry;

/**
 * A panel as it might be beside the panel as it is.
 *
 * @param turns   the facts that differ
 * @param effects what the panel gets otherwise
 * @param gone    what is concluded today and would not be
 * @param come    what would be concluded and is not today
 */
public record WhatIf(List<Turn> turns, PanelAdvice today, PanelAdvice changed, List<Effect> effects,
                     List<Judgement> gone, List<Judgement> come) {

    /**
     * @param place what to call the place of the edits in a problem
     * @param edits facts and values in the survey's words: 'clearance=9 mm'
     * @throws Problems all that is wrong with the edits
     */
    public static WhatIf of(PanelTrial trial, PanelEntry panel, String place, List<String> edits) {
        PanelAdvice today = trial.advise(panel);
        Edits made = Edits.read(trial, panel, place, edits);
        PanelAdvice changed = trial.advise(made.panel());
        return new WhatIf(made.turns(), today, changed, Effect.between(Outcome.of(today), Outcome.of(changed)),
                without(today, changed), without(changed, today));
    }

    private static List<Judgement> without(PanelAdvice one, PanelAdvice other) {
        Set<Conclusion> also = other.panel().judgements().stream().map(Judgement::conclusion).collect(Collectors.toSet());
        return one.panel().judgements().stream().filter(j -> !also.contains(j.conclusion())).toList();
    }

    /** Whether another material or another amount is laid though no layer comes or goes. */
    public boolean isOtherLayup() {
        return !today.layup().equals(changed.layup());
    }
}
