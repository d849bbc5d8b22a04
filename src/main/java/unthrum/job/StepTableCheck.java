package unthrum.job;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import unthrum.facts.Duty.Work;
import unthrum.facts.Threshold;
import unthrum.job.StepTable.Spot;
import unthrum.knowledge.Knowledge;
import unthrum.knowledge.RuleCard;
import unthrum.knowledge.Source;
import unthrum.material.Layer;
import unthrum.reading.Dimension;
import unthrum.reading.Nearest;
import unthrum.reading.Places;
import unthrum.reading.Words;
import unthrum.survey.Zone;

/** Reports names that nothing bears, work and layers that no step takes up, zones in no area, and circles. */
final class StepTableCheck {
    private final StepTable table;
    private final Knowledge knowledge;
    private final Places places;

    StepTableCheck(StepTable table, Knowledge knowledge, Places places) {
        this.table = table;
        this.knowledge = knowledge;
        this.places = places;
    }

    void all() {
        if (!Stream.of("areas", "steps", "order", "apart").allMatch(places::sound)) {
            return;
        }
        once("areas", table.areas().stream().map(Area::area).toList(), "area");
        once("steps", table.steps().stream().map(StepKind::step).toList(), "step");
        once("order", table.order().stream().map(OrderRule::order).toList(), "order");
        zones();
        work();
        layers();
        for (int i = 0; i < table.steps().size(); i++) {
            step(table.steps().get(i), "steps[" + i + "]");
        }
        for (int i = 0; i < table.order().size(); i++) {
            OrderRule rule = table.order().get(i);
            kinds(rule.before().orElse(List.of()), "order[" + i + "].before");
            kinds(rule.then(), "order[" + i + "].then");
            source(rule.source(), "order[" + i + "].source");
        }
        for (int i = 0; i < table.apart().size(); i++) {
            kinds(table.apart().get(i).these(), "apart[" + i + "].these");
            kinds(table.apart().get(i).those(), "apart[" + i + "].those");
            source(table.apart().get(i).source(), "apart[" + i + "].source");
        }
        circle();
    }

    private void once(String list, List<String> names, String key) {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < names.size(); i++) {
            if (!seen.add(names.get(i))) {
                places.problem(list + "[" + i + "]." + key, "'" + names.get(i) + "' again", "each name once", "");
            }
        }
    }

    private void zones() {
        Map<Zone, String> held = new EnumMap<>(Zone.class);
        for (int i = 0; i < table.areas().size(); i++) {
            for (Zone zone : table.areas().get(i).zones()) {
                String earlier = held.putIfAbsent(zone, table.areas().get(i).area());
                if (earlier != null) {
                    places.problem("areas[" + i + "].zones", "the zone '" + Words.of(zone) + "', which is in '"
                            + earlier + "' already", "each zone in one area", "");
                }
            }
        }
        missing("areas", Stream.of(Zone.values()).filter(z -> !held.containsKey(z)), "each zone in an area");
    }

    private void work() {
        missing("steps", Stream.of(Work.values()).filter(w -> table.steps().stream().noneMatch(s -> s.does(w))),
                "a step for all work that a rule may ask for");
    }

    private void layers() {
        for (Layer layer : Layer.values()) {
            long steps = table.steps().stream().filter(s -> s.lays(layer)).count();
            boolean laid = layer != Layer.SEAL && layer != Layer.ANY;
            if (steps != (laid ? 1 : 0)) {
                places.problem("steps", steps + " steps that lay '" + layer.word() + "'",
                        laid ? "one step for each layer" : "none, since holes are closed and no layer", "");
            }
        }
    }

    private void missing(String path, Stream<? extends Enum<?>> words, String expected) {
        String all = words.map(Words::of).collect(Collectors.joining(", "));
        if (!all.isEmpty()) {
            places.problem(path, "nothing for: " + all, expected, "");
        }
    }

    private void step(StepKind kind, String path) {
        source(kind.source(), path + ".source");
        source(kind.labour().source(), path + ".labour.source");
        kind.with().ifPresent(w -> kinds(List.of(w), path + ".with"));
        kind.areas().ifPresent(names -> names.forEach(n -> known(n, table.areas().stream().map(Area::area).toList(),
                path + ".areas", "an area of this file")));
        rules(kind.rules(), path + ".rules");
        rules(kind.rulesForTwo(), path + ".rules for two");
        List<StepKind.Wait> waits = kind.waits().orElse(List.of());
        for (int i = 0; i < waits.size(); i++) {
            String at = path + ".waits[" + i + "]";
            time(waits.get(i).least(), at + ".least");
            time(waits.get(i).most(), at + ".most");
            rules(waits.get(i).rules(), at + ".rules");
        }
    }

    private void time(Optional<String> threshold, String path) {
        List<String> times = knowledge.numbers().stream().filter(t -> t.dimension() == Dimension.TIME)
                .map(Threshold::id).toList();
        threshold.ifPresent(id -> known(id, times, path, "a threshold that is a time"));
    }

    private void rules(Optional<List<String>> ids, String path) {
        List<String> rules = knowledge.cards().stream().map(RuleCard::id).toList();
        ids.orElse(List.of()).forEach(id -> known(id, rules, path, "the id of a rule"));
    }

    private void kinds(List<String> names, String path) {
        List<String> steps = table.steps().stream().map(StepKind::step).toList();
        names.forEach(name -> known(name, steps, path, "a step of this file"));
    }

    private void source(String key, String path) {
        List<String> sources = new ArrayList<>(Source.MARKS);
        knowledge.sources().forEach(s -> sources.add(s.source()));
        known(key, sources, path, "a source or a mark");
    }

    private void known(String name, List<String> names, String path, String expected) {
        if (!names.contains(name)) {
            places.problem(path, "'" + name + "'", expected, Nearest.remedy(name, names));
        }
    }

    /** No vehicle has more steps than all of them, so an order without a circle there has none anywhere. */
    private void circle() {
        List<Spot> spots = table.spots();
        try {
            Ordering.of(spots.size(), table.edges(spots));
        } catch (Ordering.Circle e) {
            places.problem("order", circle(e.edges(), spots), "an order in which nothing waits for itself",
                    "take one of these apart: " + String.join(", ", rules(e.edges())));
        }
    }

    private static String circle(List<Edge> edges, List<Spot> spots) {
        return "a circle: " + edges.stream().map(e -> "'" + spots.get(e.before()).name() + "' before '"
                + spots.get(e.then()).name() + "' by " + e.rule().order()).collect(Collectors.joining(", "));
    }

    private static Set<String> rules(List<Edge> edges) {
        return edges.stream().map(e -> e.rule().order()).collect(Collectors.toCollection(LinkedHashSet::new));
    }
}
