package unthrum.reasoning;

import java.util.List;
import java.util.stream.Stream;
import unthrum.facts.Conclusion;
import unthrum.facts.Panel;
import unthrum.facts.Place;
import unthrum.facts.Rib;
import unthrum.facts.Veto;
import unthrum.material.Layer;
import unthrum.derive.Assumed;
import unthrum.derive.PanelFacts;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.Reason.Compared;
import unthrum.survey.Run;

/**
 * All that speaks for and against treating one panel: its facts and every conclusion on it with its reasons.
 *
 * @param overruled the rules that the fitter set aside here, whether that counts or not
 */
public record Case(PanelFacts facts, List<Judgement> judgements, List<Overruled> overruled) {

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

    /** The part of the panel that a layer may lie on, in m²: all of it less the ribs that a veto keeps bare. */
    public double openArea(Layer layer) {
        Panel whole = facts.the(Panel.class);
        double bare = facts.all(Rib.class).filter(r -> isBare(r.place(), layer))
                .mapToDouble(r -> r.breadth() * (r.runs() == Run.ACROSS ? whole.width() : whole.length())).sum();
        return Math.max(whole.area() - bare, 0);
    }

    /** Whether a veto keeps this part of the panel bare of the layer. */
    public boolean isBare(Place part, Layer layer) {
        return all(Veto.class).stream().map(j -> (Veto) j.conclusion())
                .anyMatch(v -> v.place().equals(part) && layer.matches(v.layer()));
    }

    /** The assumptions that the given conclusions rest on, in the order of the survey's keys. */
    public List<Assumed> assumptionsBehind(Stream<Judgement> some) {
        List<String> keys = some.flatMap(j -> j.reasons().stream()).flatMap(r -> r.compared().stream())
                .filter(Compared::assumed).map(c -> SurveyKeys.of(c.fact().getClass(), c.component())).distinct()
                .toList();
        return facts.assumptions().values().stream().filter(a -> keys.contains(a.fact())).toList();
    }
}
