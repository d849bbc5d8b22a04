package unthrum.reasoning;

import java.util.List;
import java.util.stream.Stream;
import unthrum.facts.Conclusion;
import unthrum.reasoning.derive.Assumed;
import unthrum.reasoning.derive.PanelFacts;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.Reason.Compared;

/** All that speaks for and against treating one panel: its facts and every conclusion on it with its reasons. */
public record Case(PanelFacts facts, List<Judgement> judgements) {

    public String panel() {
        return facts.panel();
    }

    /** The conclusions of one kind, those for the whole vehicle among them. */
    public List<Judgement> all(Class<? extends Conclusion> kind) {
        return judgements.stream().filter(j -> kind.isInstance(j.conclusion())).toList();
    }

    /** The conclusions of one kind on this panel and its parts. */
    public List<Judgement> own(Class<? extends Conclusion> kind) {
        return all(kind).stream().filter(j -> j.conclusion().place().panel().equals(panel())).toList();
    }

    /** The assumptions that the given conclusions rest on, in the order of the survey's keys. */
    public List<Assumed> assumptionsBehind(Stream<Judgement> some) {
        List<String> keys = some.flatMap(j -> j.reasons().stream()).flatMap(r -> r.compared().stream())
                .filter(Compared::assumed).map(c -> SurveyKeys.of(c.fact().getClass(), c.component())).distinct()
                .toList();
        return facts.assumptions().values().stream().filter(a -> keys.contains(a.fact())).toList();
    }
}
