package unthrum.reasoning.change;

import java.util.ArrayList;
import java.util.List;
import unthrum.reasoning.PanelAdvice;
import unthrum.survey.PanelEntry;

/** A panel's case turned over: why it does not get what it does not get, what would change that, and how sure it is. */
public record Turned(PanelAdvice advice, List<WhyNot> whyNots, List<Change> changes, Confidence confidence) {

    public static Turned of(PanelTrial trial, PanelEntry panel) {
        PanelAdvice advice = trial.advise(panel);
        Changes search = new Changes(trial, panel);
        List<Change> single = search.single();
        List<Change> changes = new ArrayList<>(single);
        changes.addAll(search.pairs(single));
        return new Turned(advice, new WhyNots(trial, advice).all(), List.copyOf(changes),
                Confidence.of(advice, single));
    }
}
