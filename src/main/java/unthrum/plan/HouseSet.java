package unthrum.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import unthrum.effect.Laid;
import unthrum.effect.Layup;
import unthrum.material.Figures;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.reasoning.Options;
import unthrum.reasoning.PanelAdvice;

/**
 * The few materials that a whole job is done with. Of the layups that serve a panel alike the lightest tells which
 * layers it takes; of those with these layers the one is taken that uses what most other panels can use too: of each
 * kind of layer first the material that can cover the most area, then the one that covers the most of the rest, and so
 * on.
 */
final class HouseSet {

    private static final Comparator<Layup> LIGHTEST = Comparator.comparingDouble(Layup::mass)
            .thenComparingDouble(Layup::price).thenComparingDouble(Layup::thickness)
            .thenComparing(Layup::materials, Figures::byFigures);

    private final Map<Layer, List<Material>> ranked = new EnumMap<>(Layer.class);

    private HouseSet(List<List<Layup>> alike) {
        for (Layer layer : Layer.values()) {
            ranked.put(layer, rank(layer, alike));
        }
    }

    /** The same advice with as few materials as do as well. */
    static List<PanelAdvice> settle(List<PanelAdvice> advice, AlikeOffers alike) {
        List<List<Layup>> layups = advice.stream().map(p -> sameLayers(p, alike)).toList();
        HouseSet house = new HouseSet(layups);
        List<PanelAdvice> settled = new ArrayList<>();
        for (int i = 0; i < advice.size(); i++) {
            PanelAdvice panel = advice.get(i);
            settled.add(layups.get(i).stream().min(Comparator.comparingInt((Layup l) -> house.rank(l)).thenComparing(LIGHTEST))
                    .map(panel::with).orElse(panel));
        }
        return settled;
    }

    /** The layups that serve a panel alike, of the same layers as the lightest of them; none where it gets none. */
    static List<Layup> sameLayers(PanelAdvice panel, AlikeOffers alike) {
        List<Options.Offer> offers = panel.options().offers();
        boolean safety = offers.stream().anyMatch(Options.Offer::safe);
        List<Layup> layups = panel.layup().isEmpty() ? List.of()
                : alike.paid(offers.stream().filter(o -> o.safe() || !safety).toList()).stream()
                        .map(Options.Offer::layup).toList();
        return layups.stream().min(LIGHTEST).map(lightest -> layups.stream()
                .filter(l -> layers(l).equals(layers(lightest))).toList()).orElse(List.of());
    }

    private static List<Layer> layers(Layup layup) {
        return layup.layers().stream().map(Laid::layer).toList();
    }

    private int rank(Layup layup) {
        return layup.layers().stream().mapToInt(l -> ranked.get(l.layer()).indexOf(l.material())).sum();
    }

    private static List<Material> rank(Layer layer, List<List<Layup>> alike) {
        List<List<Layup>> rest = new ArrayList<>(alike);
        List<Material> ranked = new ArrayList<>();
        Map<Material, Long> areas = areas(layer, rest);
        while (!areas.isEmpty()) {
            Material most = areas.entrySet().stream().min(Map.Entry.<Material, Long>comparingByValue().reversed()
                    .thenComparing(Map.Entry::getKey, Figures.ORDER)).orElseThrow().getKey();
            ranked.add(most);
            rest.removeIf(p -> choices(layer, p).contains(most));
            areas = areas(layer, rest);
        }
        alike.stream().flatMap(p -> choices(layer, p).stream()).distinct().filter(m -> !ranked.contains(m))
                .sorted(Figures.ORDER).forEach(ranked::add);
        return ranked;
    }

    /** The area in cm² that each material could cover on these panels. */
    private static Map<Material, Long> areas(Layer layer, List<List<Layup>> panels) {
        Map<Material, Long> areas = new LinkedHashMap<>();
        panels.forEach(p -> choices(layer, p).forEach(m -> areas.merge(m, area(layer, p), Long::sum)));
        return areas;
    }

    private static long area(Layer layer, List<Layup> panel) {
        return Math.round(panel.get(0).of(layer).map(Laid::area).orElse(0.0) * SharingProblem.AREA);
    }

    private static Set<Material> choices(Layer layer, List<Layup> panel) {
        Set<Material> choices = new HashSet<>();
        panel.forEach(l -> l.of(layer).map(Laid::material).ifPresent(choices::add));
        return choices;
    }
}
