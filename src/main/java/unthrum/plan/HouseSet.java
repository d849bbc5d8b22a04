package unthrum.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.effect.Laid;
import unthrum.effect.Layup;
import unthrum.reasoning.PanelAdvice;

/**
 * The few materials that a whole job is done with. Of the layups that serve a panel alike the one is taken that uses
 * what most other panels can use too: of each kind of layer first the material that can cover the most area, then the
 * one that covers the most of the rest, and so on.
 */
final class HouseSet {

    private final Map<Layer, List<Material>> ranked = new EnumMap<>(Layer.class);

    private HouseSet(List<PanelAdvice> advice) {
        for (Layer layer : Layer.values()) {
            ranked.put(layer, rank(layer, advice));
        }
    }

    /** The same advice with as few materials as do as well. */
    static List<PanelAdvice> settle(List<PanelAdvice> advice) {
        HouseSet house = new HouseSet(advice);
        return advice.stream().map(house::settle).toList();
    }

    private PanelAdvice settle(PanelAdvice panel) {
        return panel.options().alike().stream().min(Comparator.comparingInt(this::rank)).map(panel::with).orElse(panel);
    }

    private int rank(Layup layup) {
        return layup.layers().stream().mapToInt(l -> ranked.get(l.layer()).indexOf(l.material())).sum();
    }

    private static List<Material> rank(Layer layer, List<PanelAdvice> advice) {
        List<PanelAdvice> rest = new ArrayList<>(advice);
        List<Material> ranked = new ArrayList<>();
        Map<Material, Double> areas = areas(layer, rest);
        while (!areas.isEmpty()) {
            Material most = areas.entrySet().stream().max(Map.Entry.<Material, Double>comparingByValue()
                    .thenComparing(e -> e.getKey().material(), Comparator.reverseOrder())).orElseThrow().getKey();
            ranked.add(most);
            rest.removeIf(p -> choices(layer, p).contains(most));
            areas = areas(layer, rest);
        }
        advice.stream().flatMap(p -> choices(layer, p).stream()).distinct().filter(m -> !ranked.contains(m))
                .sorted(Comparator.comparing(Material::material)).forEach(ranked::add);
        return ranked;
    }

    /** The area that each material could cover on these panels. */
    private static Map<Material, Double> areas(Layer layer, List<PanelAdvice> panels) {
        Map<Material, Double> areas = new LinkedHashMap<>();
        panels.forEach(p -> choices(layer, p).forEach(m -> areas.merge(m, area(layer, p), Double::sum)));
        return areas;
    }

    private static double area(Layer layer, PanelAdvice panel) {
        return panel.layup().of(layer).map(Laid::area).orElse(0.0);
    }

    private static Set<Material> choices(Layer layer, PanelAdvice panel) {
        Set<Material> choices = new HashSet<>();
        panel.options().alike().forEach(l -> l.of(layer).map(Laid::material).ifPresent(choices::add));
        return choices;
    }
}
