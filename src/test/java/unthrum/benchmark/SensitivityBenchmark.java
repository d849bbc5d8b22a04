package unthrum.benchmark;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import unthrum.Scenarios;
import unthrum.knowledge.Knowledge;
import unthrum.knowledge.Source;
import unthrum.material.Catalogue;
import unthrum.material.Layer;
import unthrum.plan.Planner;
import unthrum.reading.Problems;
import unthrum.survey.Survey;

/**
 * Which numbers decide plans: every threshold, and every kind of number in the catalogue layer by layer, is taken a
 * fifth lower and a fifth higher, and the panels of the scenarios are counted whose verdict or materials change. A
 * temperature is moved by 10 K each way instead, a plain 0 by 1; a share ends at 100 %. Stock and the client's limits are taken out
 * of the surveys, so that no change on one panel makes room on another; what rules limit stays. '-' where the changed
 * file is refused. Not a test: start it by hand from the test class path,
 * {@code java -cp target/test-classes:target/classes:LIBRARIES unthrum.benchmark.SensitivityBenchmark [PART-OF-ID]};
 * with {@code --write} instead of a part it also writes down in {@code rules/thresholds.yaml} what was tried, for every
 * threshold without a published source.
 */
final class SensitivityBenchmark {

    private static final double STEP = 0.2;
    private static final BigDecimal KELVIN = BigDecimal.TEN;
    private static final BigDecimal WHOLE = BigDecimal.valueOf(100);
    private static final Pattern WRITTEN = Pattern.compile("(-?[0-9.]+)(.*)");
    private static final Path THRESHOLDS = Path.of("rules", "thresholds.yaml");
    private static final UnaryOperator<String> PRINTED =
            written -> written.replace("degC", "°C").replace("m2", "m²").replace("m3", "m³");
    private static final List<String> KINDS = List.of("thickness", "surface density", "service from", "service to",
            "bonds from", "burn rate", "conductivity", "emissivity", "spring modulus", "price", "facing",
            "facing modulus", "shear modulus", "loss factor");

    private final YAMLMapper yaml = new YAMLMapper();
    private final List<Survey> surveys = Scenarios.files().stream().map(Scenarios::plenty)
            .toList();
    private final Map<String, String> today = panels(Scenarios.KNOWLEDGE, Scenarios.CATALOGUE);
    private final Path file;

    private SensitivityBenchmark(Path file) {
        this.file = file;
    }

    private record Line(String id, String value, String source, String lower, String higher) {
        int most() {
            return Math.max(count(lower), count(higher));
        }

        private static int count(String changes) {
            return changes.equals("-") ? -1 : Integer.parseInt(changes);
        }
    }

    public static void main(String[] arguments) throws IOException {
        boolean write = arguments.length > 0 && arguments[0].equals("--write");
        String part = arguments.length > 0 && !write ? arguments[0] : "";
        Path file = Files.createTempFile("numbers", ".yaml");
        try {
            SensitivityBenchmark benchmark = new SensitivityBenchmark(file);
            List<Line> lines = new ArrayList<>(benchmark.thresholds(part));
            if (write) {
                benchmark.write(lines);
            }
            lines.addAll(benchmark.materials(part));
            lines.sort(Comparator.comparing(Line::most).reversed().thenComparing(Line::id));
            String row = "%-36s %-12s %-18s %6s %6s%n";
            System.out.printf("%d panels%n" + row, benchmark.today.size(), "number", "value", "source", "lower",
                    "higher");
            lines.forEach(l -> System.out.printf(row, l.id, l.value, l.source, l.lower, l.higher));
        } finally {
            Files.delete(file);
        }
    }

    private List<Line> thresholds(String part) {
        return Scenarios.KNOWLEDGE.thresholds().stream().filter(t -> t.threshold().contains(part)).map(t -> {
            Predicate<JsonNode> own = n -> n.get("threshold").asText().equals(t.threshold());
            Supplier<Map<String, String>> plan =
                    () -> panels(Scenarios.KNOWLEDGE.withThresholds(file), Scenarios.CATALOGUE);
            return line(t.threshold(), t.value().toString(), t.source(), "thresholds", own, "value", plan);
        }).toList();
    }

    /** Puts what was tried under each number that nobody published, in place of what stood there. */
    private void write(List<Line> lines) throws IOException {
        Map<String, Line> byId = lines.stream().collect(Collectors.toMap(Line::id, l -> l));
        List<String> text = new ArrayList<>();
        String value = "";
        Line at = null;
        for (String row : Files.readAllLines(THRESHOLDS)) {
            String[] entry = row.strip().split(": ", 2);
            at = entry[0].equals("- threshold") ? byId.get(entry[1]) : at;
            value = entry[0].equals("value") ? entry[1].replace("\"", "") : value;
            if (!entry[0].equals("tried")) {
                text.add(row);
            }
            if (entry[0].equals("checked") && Source.MARKS.contains(at.source)) {
                text.add("    tried: " + PRINTED.apply(moved(value, -1) + " to " + moved(value, 1)) + "; "
                        + (at.most() < 1 ? "no panel" : at.most() == 1 ? "1 panel" : at.most() + " panels")
                        + " of " + today.size() + (at.most() > 1 ? " change" : " changes"));
            }
        }
        Files.write(THRESHOLDS, text);
    }

    private List<Line> materials(String part) {
        Supplier<Map<String, String>> plan = () -> panels(Scenarios.KNOWLEDGE, Catalogue.of(file));
        List<Line> lines = new ArrayList<>();
        for (String kind : KINDS) {
            for (Layer layer : Layer.values()) {
                Predicate<JsonNode> own = n -> n.get("layer").asText().equals(layer.word())
                        && !n.findValues(kind).isEmpty();
                String id = layer.word() + ": " + kind;
                if (id.contains(part) && elements("materials").stream().anyMatch(own)) {
                    lines.add(line(id, "all", "", "materials", own, kind, plan));
                }
            }
        }
        return lines;
    }

    private Line line(String id, String value, String source, String list, Predicate<JsonNode> own, String key,
                      Supplier<Map<String, String>> plan) {
        String lower = changes(list, own, key, -1, plan);
        String higher = changes(list, own, key, 1, plan);
        System.err.println(id + " " + lower + " " + higher);
        return new Line(id, value, source, lower, higher);
    }

    /** How many panels the plans differ in when the numbers under a key are moved one way. */
    private String changes(String list, Predicate<JsonNode> own, String key, int way,
                           Supplier<Map<String, String>> plan) {
        List<JsonNode> elements = elements(list);
        elements.stream().filter(own).flatMap(n -> n.findParents(key).stream())
                .filter(parent -> WRITTEN.matcher(parent.get(key).asText()).matches())
                .forEach(parent -> ((ObjectNode) parent).put(key, moved(parent.get(key).asText(), way)));
        try {
            yaml.writeValue(file.toFile(), Map.of(list, elements));
            Map<String, String> then = plan.get();
            return String.valueOf(today.keySet().stream().filter(p -> !today.get(p).equals(then.get(p))).count());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (Problems e) {
            return "-";
        }
    }

    private static String moved(String written, int way) {
        Matcher m = WRITTEN.matcher(written);
        if (!m.matches()) {
            throw new IllegalArgumentException("'" + written + "' is no number");
        }
        BigDecimal number = new BigDecimal(m.group(1));
        BigDecimal step = m.group(2).equals(" degC") ? KELVIN
                : number.signum() == 0 && m.group(2).isEmpty() ? BigDecimal.ONE
                : number.abs().multiply(BigDecimal.valueOf(STEP));
        BigDecimal then = number.add(step.multiply(BigDecimal.valueOf(way)), MathContext.DECIMAL64);
        BigDecimal ended = m.group(2).equals(" %") ? then.min(WHOLE) : then;
        return ended.stripTrailingZeros().toPlainString() + m.group(2);
    }

    private List<JsonNode> elements(String list) {
        try {
            List<JsonNode> elements = new ArrayList<>();
            yaml.readTree(Path.of("rules", list + ".yaml").toFile()).get(list).forEach(elements::add);
            return elements;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Verdict and materials of every panel of every scenario. */
    private Map<String, String> panels(Knowledge knowledge, Catalogue catalogue) {
        Planner planner = new Planner(knowledge, catalogue);
        Map<String, String> panels = new TreeMap<>();
        surveys.forEach(s -> planner.plan(s).panels().forEach(p -> panels.put(s.survey() + ", " + p.name(),
                p.verdict() + ": " + p.layup())));
        return panels;
    }
}
