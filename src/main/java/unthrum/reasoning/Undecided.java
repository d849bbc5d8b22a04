package unthrum.reasoning;

import java.util.List;
import java.util.Map;
import unthrum.facts.Place;
import unthrum.facts.Question;
import unthrum.facts.Veto;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.reasoning.engine.Judgement;

/**
 * Whether a measurement decides over a panel that gets nothing today: a want that only assumptions defeat or keep from
 * being served, or a bay that nobody tapped and that may be damped. A question that could change nothing decides
 * nothing.
 */
record Undecided(Case panel, List<WeighedWant> wants, Map<Material, List<Judgement>> rejected) {

    boolean yes() {
        return wants.stream().anyMatch(w -> w.stands() ? keptOutByAssumption(w.layer()) : defeatedByAssumption(w))
                || panel.own(Question.class).stream().map(j -> (Question) j.conclusion())
                        .anyMatch(q -> q.fact().equals("tap") && mayBeDamped(q.place()));
    }

    private static boolean defeatedByAssumption(WeighedWant want) {
        return want.vetoes().stream().allMatch(Judgement::restsOnAssumption);
    }

    private boolean keptOutByAssumption(Layer layer) {
        return rejected.entrySet().stream().filter(r -> r.getKey().layer() == layer)
                .anyMatch(r -> r.getValue().stream().allMatch(Judgement::restsOnAssumption));
    }

    private boolean mayBeDamped(Place bay) {
        return panel.all(Veto.class).stream().filter(j -> !j.restsOnAssumption()).map(j -> (Veto) j.conclusion())
                .noneMatch(v -> Layer.DAMPING.matches(v.layer()) && bay.within(v.place()));
    }
}
