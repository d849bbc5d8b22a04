package unthrum.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import unthrum.material.Layer;

@DisplayName("Conclusions rest on each other in one direction only")
class StrataTest {

    /** A kind of conclusion about a layer, such as 'Want DAMPING'; kinds without layers stand for themselves. */
    private record Node(String kind, Layer layer) {
        @Override
        public String toString() {
            return layer == null ? kind : kind + " " + layer;
        }
    }

    private record Edge(Node from, Node to, boolean negated, String rule) {
    }

    /** Facts first, then what is wanted or barred; bounds; what is to be done, shown or measured; last what waits. */
    private static final Map<String, Integer> STRATUM = Map.of("Want", 1, "Veto", 1, "Limit", 2, "Pairing", 2,
            "Duty", 3, "Caution", 3, "Question", 3, "Hold", 4);
    private static final Set<String> LAYERED = Set.of("Want", "Veto", "Limit", "Pairing");
    private static final Pattern CONDITION = Pattern.compile(
            "(not |exists )?(?:\\$(\\w+) : )?(Want|Veto|Limit|Pairing|Duty|Caution|Hold|Question)\\((.*)\\)");
    private static final Pattern LAYERS = Pattern.compile("layer (==|!=|in) (\\(?)([^)]*)");
    private static final Pattern CONCLUSION = Pattern.compile("insertLogical\\(new (\\w+)\\([^,]+, (.*)\\)\\);");

    private static List<Edge> edges(List<RuleText> rules) {
        List<Edge> edges = new ArrayList<>();
        for (RuleText rule : rules) {
            Map<String, Set<Node>> bound = new LinkedHashMap<>();
            for (String condition : rule.conditions()) {
                Matcher m = CONDITION.matcher(condition);
                if (m.matches()) {
                    Set<Node> from = nodes(m.group(3), m.group(4));
                    bound.put(Optional.ofNullable(m.group(2)).orElse("?" + bound.size()), from);
                    for (String consequence : rule.consequences()) {
                        for (Node to : concluded(consequence, bound)) {
                            from.forEach(f -> edges.add(new Edge(f, to, "not ".equals(m.group(1)), rule.id())));
                        }
                    }
                }
            }
        }
        return edges;
    }

    private static Set<Node> nodes(String kind, String tests) {
        if (!LAYERED.contains(kind)) {
            return Set.of(new Node(kind, null));
        }
        Matcher m = LAYERS.matcher(tests);
        Set<Layer> layers = m.find() ? named(m.group(3)) : Set.of(Layer.values());
        boolean except = m.reset().find() && m.group(1).equals("!=");
        return Stream.of(Layer.values()).filter(l -> layers.contains(l) != except)
                .map(l -> new Node(kind, l)).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static Set<Layer> named(String text) {
        return Pattern.compile("Layer\\.(\\w+)").matcher(text).results().map(r -> Layer.valueOf(r.group(1)))
                .collect(Collectors.toSet());
    }

    private static Set<Node> concluded(String consequence, Map<String, Set<Node>> bound) {
        Matcher m = CONCLUSION.matcher(consequence);
        assertThat(m.matches()).as(consequence).isTrue();
        if (!LAYERED.contains(m.group(1))) {
            return Set.of(new Node(m.group(1), null));
        }
        String layer = m.group(2).split(", ")[0];
        Set<Layer> layers = layer.startsWith("Layer.") ? named(layer)
                : bound.getOrDefault(layer.substring(1, layer.indexOf('.')), Set.of()).stream().map(Node::layer)
                        .collect(Collectors.toSet());
        return layers.stream().map(l -> new Node(m.group(1), l)).collect(Collectors.toSet());
    }

    /** One circle of conclusions, or nothing. */
    private static List<Node> circle(List<Edge> edges) {
        Map<Node, Set<Node>> next = new LinkedHashMap<>();
        edges.forEach(e -> next.computeIfAbsent(e.from(), n -> new LinkedHashSet<>()).add(e.to()));
        Set<Node> done = new HashSet<>();
        for (Node start : next.keySet()) {
            List<Node> circle = circle(start, next, new ArrayList<>(), done);
            if (!circle.isEmpty()) {
                return circle;
            }
        }
        return List.of();
    }

    private static List<Node> circle(Node node, Map<Node, Set<Node>> next, List<Node> path, Set<Node> done) {
        if (path.contains(node)) {
            return List.copyOf(path.subList(path.indexOf(node), path.size()));
        }
        if (!done.add(node)) {
            return List.of();
        }
        path.add(node);
        for (Node following : next.getOrDefault(node, Set.of())) {
            List<Node> circle = circle(following, next, path, done);
            if (!circle.isEmpty()) {
                return circle;
            }
        }
        path.remove(node);
        return List.of();
    }

    @Test
    @DisplayName("no conclusion holds itself up, nor bars itself, through any chain of rules")
    void noCircles() {
        List<Edge> edges = edges(RuleText.shipped());
        assertThat(edges).hasSizeGreaterThan(50);
        assertThat(circle(edges)).isEmpty();
    }

    @Test
    @DisplayName("a rule looks only at conclusions of an earlier kind; a want may bring a companion want")
    void order() {
        assertThat(edges(RuleText.shipped())).allSatisfy(e -> {
            boolean companion = e.from().kind().equals("Want") && e.to().kind().equals("Want") && !e.negated();
            assertThat(companion || STRATUM.get(e.from().kind()) < STRATUM.get(e.to().kind()))
                    .as("%s: %s from %s", e.rule(), e.to(), e.from()).isTrue();
        });
    }

    @Test
    @DisplayName("a circle would be found: foam for a barrier and a barrier for its foam, or through a 'not'")
    void circleIsFound() {
        String foam = rule("a/foam", "Want(place == $p.place, layer == Layer.BARRIER)", "Layer.DECOUPLER");
        String barrier = rule("a/barrier", "exists Want(place == $p.place, layer in (Layer.DECOUPLER, Layer.SEAL))",
                "Layer.BARRIER");
        String bare = rule("a/bare", "not Want(place == $p.place, layer != Layer.SEAL)", "Layer.INSULATION");
        assertThat(circle(edges(RuleText.of("a", foam)))).isEmpty();
        assertThat(circle(edges(RuleText.of("a", foam + barrier)))).hasSize(2);
        assertThat(circle(edges(RuleText.of("a", bare)))).containsExactly(new Node("Want", Layer.INSULATION));
    }

    private static String rule(String id, String condition, String layer) {
        return "rule \"" + id + "\"\n@id(\"" + id + "\")\nwhen\n$p : Panel()\n" + condition
                + "\nthen\ninsertLogical(new Want($p.place(), " + layer + "));\nend\n";
    }
}
