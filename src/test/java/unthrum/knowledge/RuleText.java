package unthrum.knowledge;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A rule as its author wrote it, read without the rule compiler, so that what the compiler lets pass can be refused.
 *
 * @param stray lines that belong to no part of a rule, such as an attribute
 */
public record RuleText(String subject, String name, Map<String, String> marks, List<String> conditions,
                       List<String> consequences, List<String> stray) {

    static final Path FOLDER = Path.of("rules");
    private static final Pattern NAME = Pattern.compile("rule \"([^\"]*)\"");
    private static final Pattern MARK = Pattern.compile("@(\\w+)\\(\"([^\"\\\\]*)\"\\)");
    private static final Pattern BINDING = Pattern.compile("\\$(\\w+) : (\\w+)\\(");
    private static final Pattern HEAD = Pattern.compile(
            "package unthrum\\.rules|import unthrum\\.(facts|survey)\\.\\*;|import unthrum\\.facts\\.\\w+\\.\\w+;"
                    + "|import unthrum\\.material\\.Layer;|//.*|");

    private enum Part { MARKS, WHEN, THEN, NONE }

    /** Every rule of the shipped files. */
    public static List<RuleText> shipped() {
        List<RuleText> rules = new ArrayList<>();
        for (Path file : files()) {
            try {
                rules.addAll(of(file.getFileName().toString().replace(".drl", ""), Files.readString(file)));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return rules;
    }

    static List<Path> files() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(f -> f.toString().endsWith(".drl")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The rules of one file; what stands outside them and is no head of a file goes to the rule before it. */
    static List<RuleText> of(String subject, String text) {
        List<RuleText> rules = new ArrayList<>();
        RuleText rule = new RuleText(subject, "the head of " + subject, new LinkedHashMap<>(), List.of(), List.of(),
                new ArrayList<>());
        Part part = Part.NONE;
        for (String line : text.lines().map(String::strip).toList()) {
            Matcher name = NAME.matcher(line);
            Matcher mark = MARK.matcher(line);
            if (part == Part.NONE && name.matches()) {
                rule = new RuleText(subject, name.group(1), new LinkedHashMap<>(), new ArrayList<>(),
                        new ArrayList<>(), new ArrayList<>(rules.isEmpty() ? rule.stray() : List.of()));
                rules.add(rule);
                part = Part.MARKS;
            } else if (part == Part.MARKS && mark.matches() && !rule.marks().containsKey(mark.group(1))) {
                rule.marks().put(mark.group(1), mark.group(2));
            } else if (part == Part.MARKS && line.equals("when")) {
                part = Part.WHEN;
            } else if (part == Part.WHEN && line.equals("then")) {
                part = Part.THEN;
            } else if (part == Part.THEN && line.equals("end")) {
                part = Part.NONE;
            } else if (part == Part.WHEN) {
                rule.conditions().add(line);
            } else if (part == Part.THEN) {
                rule.consequences().add(line);
            } else if (part == Part.MARKS || !HEAD.matcher(line).matches()) {
                rule.stray().add(line);
            }
        }
        return rules;
    }

    public String id() {
        return marks.getOrDefault("id", "?");
    }

    /** Variables and the facts they stand for; only what a rule needs to be there is bound. */
    public Map<String, String> bound() {
        Map<String, String> bound = new LinkedHashMap<>();
        for (String condition : conditions) {
            Matcher binding = BINDING.matcher(condition);
            if (!condition.startsWith("not ") && !condition.startsWith("exists ") && binding.lookingAt()) {
                bound.put(binding.group(1), binding.group(2));
            }
        }
        return bound;
    }

    /** The kinds of conclusion it draws. */
    List<String> concludes() {
        return consequences.stream().map(Pattern.compile("insertLogical\\(new (\\w+)\\(.*")::matcher)
                .filter(Matcher::matches).map(m -> m.group(1)).distinct().toList();
    }

    /** The thresholds it names, by variable. */
    public Map<String, String> thresholds() {
        Map<String, String> thresholds = new LinkedHashMap<>();
        for (String condition : conditions) {
            Matcher m = Pattern.compile("\\$(\\w+) : Threshold\\(id == \"([^\"]+)\"\\)").matcher(condition);
            if (m.matches()) {
                thresholds.put(m.group(1), m.group(2));
            }
        }
        return thresholds;
    }
}
