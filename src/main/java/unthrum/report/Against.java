package unthrum.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import unthrum.facts.Pairing;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.reasoning.Considered;
import unthrum.effect.Layup;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.engine.Judgement;

/** Why a layer that is wanted is not in the layup: the fewest limits that between them reject all of its materials. */
record Against(Layer layer, Map<Judgement, Integer> limits, int offered, List<Considered> outdone) {

    static Against of(Layer layer, PanelAdvice advice) {
        List<Considered> all = advice.considered().stream().filter(c -> c.material().layer() == layer).toList();
        Map<Judgement, Integer> limits = new LinkedHashMap<>();
        Set<Material> open = new LinkedHashSet<>();
        all.stream().filter(c -> !c.rejectedBy().isEmpty()).forEach(c -> open.add(c.material()));
        while (!open.isEmpty()) {
            Judgement widest = widest(all, open);
            List<Material> hit = all.stream().filter(c -> c.rejectedBy().contains(widest))
                    .map(Considered::material).toList();
            limits.put(widest, hit.size());
            hit.forEach(open::remove);
        }
        return new Against(layer, limits, all.size(), all.stream().filter(c -> c.best().isPresent()).toList());
    }

    /** The limit that rejects most of those not yet accounted for. */
    private static Judgement widest(List<Considered> all, Set<Material> open) {
        Map<Judgement, Integer> counts = new LinkedHashMap<>();
        all.stream().filter(c -> open.contains(c.material())).flatMap(c -> c.rejectedBy().stream())
                .forEach(j -> counts.merge(j, 1, Integer::sum));
        return counts.entrySet().stream().max(Comparator.comparing(Map.Entry::getValue)).orElseThrow().getKey();
    }

    /** The companions without which the layer is useless and which are not in the layup. */
    static List<Judgement> missingCompanions(Layer layer, Layup layup, PanelAdvice advice) {
        List<Judgement> missing = new ArrayList<>();
        for (Judgement judgement : advice.panel().all(Pairing.class)) {
            Pairing pairing = (Pairing) judgement.conclusion();
            if (pairing.tie() == Pairing.Tie.NEEDS && pairing.layer() == layer && !layup.has(pairing.other())) {
                missing.add(judgement);
            }
        }
        return missing;
    }
}
