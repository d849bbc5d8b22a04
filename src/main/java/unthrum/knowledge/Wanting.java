package unthrum.knowledge;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import unthrum.material.Layer;

/** Which rules can want which layer, read off the rules' own text: a compiled consequence does not tell. */
public final class Wanting {

    private static final Pattern RULE = Pattern.compile("rule \"([^\"]+)\"(.*?)\\nend", Pattern.DOTALL);
    private static final Pattern WANT = Pattern.compile("new Want\\(.*?Layer\\.(\\w+)\\)");

    private final Map<Layer, List<RuleCard>> byLayer = new EnumMap<>(Layer.class);

    Wanting(RuleBase rules) {
        rules.cardsByName().values().stream().map(RuleCard::subject).distinct().sorted()
                .forEach(subject -> read(text(subject), rules));
    }

    /** The rules that can want a layer, in the order of their files. */
    public List<RuleCard> of(Layer layer) {
        return byLayer.getOrDefault(layer, List.of());
    }

    private void read(String text, RuleBase rules) {
        for (Matcher rule = RULE.matcher(text); rule.find();) {
            for (Matcher want = WANT.matcher(rule.group(2)); want.find();) {
                byLayer.computeIfAbsent(Layer.valueOf(want.group(1)), l -> new ArrayList<>())
                        .add(rules.cardsByName().get(rule.group(1)));
            }
        }
    }

    private static String text(String subject) {
        try (InputStream in = Wanting.class.getClassLoader().getResourceAsStream("unthrum/rules/" + subject + ".drl")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
