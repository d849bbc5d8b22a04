package unthrum.knowledge;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import unthrum.facts.Conclusion;
import unthrum.facts.Fact;
import unthrum.facts.Panel;
import unthrum.reading.Words;

/** What is wrong with a rule, by the agreed language and marks of the rule files. */
record RuleFaults(Set<String> sources, Set<String> thresholds, Set<String> materials) {

    private static final List<String> NEEDED = List.of("id", "pattern", "standing", "source", "because", "teaches");
    private static final Set<String> KNOWN = Set.of("id", "pattern", "standing", "weight", "source", "advice",
            "because", "teaches", "layer");
    private static final Set<String> ADVISING = Set.of("Duty", "Caution", "Hold", "Question");
    private static final Set<String> PANEL_LISTS = Set.of("openings", "fixings", "moving", "covers", "behind",
            "missing", "loose");

    private static final String PATH = "\\w+(\\.\\w+)?";
    private static final String CONSTANT = "[A-Z]\\w*\\.[A-Z]\\w*";
    private static final String OTHER = "\\$\\w+\\.\\w+(\\(\\))?";
    private static final String KEY = "\"[a-z ]+\"";
    private static final String TEST = PATH + " (([!=]=|[<>]=?) (" + CONSTANT + "|" + OTHER + "|true|false)"
            + "|(not )?in \\(" + CONSTANT + "(, " + CONSTANT + ")*\\)|in \\(" + KEY + "(, " + KEY + ")*\\)"
            + "|(not )?contains \"\\w+\"|== \"[\\w/-]+\")";
    private static final Pattern CONDITION = Pattern.compile(
            "(not |exists )?(\\$\\w+ : )?[A-Z]\\w*\\((" + TEST + "(, " + TEST + ")*)?\\)");
    private static final String TERM = "\\$\\w+\\.\\w+\\(\\)";
    private static final Pattern CONSEQUENCE = Pattern.compile("insertLogical\\(new [A-Z]\\w*\\("
            + "(Place\\.VEHICLE|\\$\\w+\\.place\\(\\))"
            + "(, (" + CONSTANT + "|" + TERM + "( [-+*] " + TERM + ")?|\"[\\w ]+\"))+\\)\\);");
    /** What a consequence computes moves all one way with the fact that it is computed from. */
    private static final Pattern COMPUTED = Pattern.compile("\\$(\\w+)\\.(\\w+)\\(\\) [-+*] \\$(\\w+)\\.(\\w+)\\(\\)");
    private static final Pattern REFERENCE = Pattern.compile("\\{(\\w+)(?:\\.(\\w+))?}");
    private static final Pattern ASSUMED = Pattern.compile("(\\w+)\\(.*assumed (?:not )?contains \"(\\w+)\"");

    List<String> of(RuleText rule) {
        List<String> faults = new ArrayList<>();
        rule.stray().forEach(line -> faults.add("stray line '" + line + "'"));
        marks(rule, faults);
        conclusions(rule, faults);
        language(rule, faults);
        wording(rule, faults);
        rule.marks().forEach((mark, text) -> references(rule, mark, text, faults));
        return faults.stream().map(f -> rule.id() + ": " + f).toList();
    }

    private void marks(RuleText rule, List<String> faults) {
        NEEDED.stream().filter(m -> !rule.marks().containsKey(m)).forEach(m -> faults.add("no @" + m));
        rule.marks().keySet().stream().filter(m -> !KNOWN.contains(m)).forEach(m -> faults.add("unknown @" + m));
        if (!rule.id().matches(Pattern.quote(rule.subject()) + "/[a-z][a-z-]*[a-z]")) {
            faults.add("the id is not '" + rule.subject() + "/short-name'");
        }
        if (rule.marks().containsKey("source") && !sources.contains(rule.marks().get("source"))) {
            faults.add("unknown source");
        }
    }

    private void conclusions(RuleText rule, List<String> faults) {
        List<String> kinds = rule.concludes();
        if (kinds.size() != 1) {
            faults.add("concludes " + kinds + ", not one kind");
            return;
        }
        if (kinds.contains("Want") != rule.marks().containsKey("weight")) {
            faults.add("@weight belongs on rules that want, and on no others");
        }
        if (ADVISING.contains(kinds.get(0)) != rule.marks().containsKey("advice")) {
            faults.add("@advice belongs on duties, cautions, holds and questions, and on no others");
        }
        for (unthrum.knowledge.Pattern pattern : unthrum.knowledge.Pattern.values()) {
            if (Words.of(pattern).equals(rule.marks().get("pattern")) && !pattern.allows(conclusion(kinds.get(0)))) {
                faults.add("the pattern '" + pattern + "' does not conclude a " + kinds.get(0));
            }
        }
    }

    private void language(RuleText rule, List<String> faults) {
        rule.conditions().stream().filter(c -> !CONDITION.matcher(c).matches())
                .forEach(c -> faults.add("condition not allowed: " + c));
        rule.consequences().stream().filter(c -> !CONSEQUENCE.matcher(c).matches())
                .forEach(c -> faults.add("consequence not allowed: " + c));
        rule.consequences().forEach(c -> computed(rule, c, faults));
        List<String> lines = new ArrayList<>(rule.conditions());
        lines.addAll(rule.consequences());
        lines.stream().map(l -> l.replaceAll("\"[^\"]*\"", "")).filter(l -> l.matches(".*\\b\\d.*"))
                .forEach(l -> faults.add("naked number: " + l));
        rule.conditions().stream().filter(c -> c.contains("Threshold(")).filter(c -> rule.thresholds().values()
                .stream().noneMatch(t -> c.contains('"' + t + '"') && thresholds.contains(t)))
                .forEach(c -> faults.add("no such threshold: " + c));
        for (String condition : rule.conditions()) {
            Matcher m = ASSUMED.matcher(condition);
            if (m.find() && !component(m.group(1), m.group(2))
                    && !(m.group(1).equals("Panel") && PANEL_LISTS.contains(m.group(2)))) {
                faults.add("nothing called '" + m.group(2) + "' can be assumed: " + condition);
            }
        }
    }

    /** The search for what would change a panel counts on it that a number grows with one fact and falls with none. */
    private static void computed(RuleText rule, String consequence, List<String> faults) {
        Matcher m = COMPUTED.matcher(consequence);
        if (m.find() && ("Threshold".equals(rule.bound().get(m.group(1)))
                || !"Threshold".equals(rule.bound().get(m.group(3))) || !m.group(4).equals("value"))) {
            faults.add("computes with something else than one fact and a threshold after it: " + consequence);
        }
    }

    private void wording(RuleText rule, List<String> faults) {
        String because = rule.marks().getOrDefault("because", "");
        if (because.endsWith(".") || because.length() < 15 || because.length() > 200) {
            faults.add("@because is a clause of 15 to 200 characters without a full stop");
        }
        if (because.matches("(Th|An? |No |I[nt] |On |Wh).*")) {
            faults.add("@because starts in lower case");
        }
        String teaches = rule.marks().getOrDefault("teaches", "");
        if (!teaches.matches("[A-Z].*\\.") || teaches.length() < 40 || teaches.length() > 400
                || teaches.split("\\. ").length > 4) {
            faults.add("@teaches is one to four full sentences of 40 to 400 characters");
        }
        String advice = rule.marks().get("advice");
        if (advice != null && (!advice.matches("[A-Z].*[^.]") || advice.length() < 15 || advice.length() > 230)) {
            faults.add("@advice is an imperative of 15 to 230 characters: a capital first, no full stop last");
        }
        if (rule.marks().containsKey("layer") && !rule.concludes().equals(List.of("Duty"))) {
            faults.add("@layer says with which layer a duty comes, and only duties have it");
        }
        if (!rule.name().matches("[A-Z].*[^.]")) {
            faults.add("the rule's sentence starts with a capital and has no full stop");
        }
        String all = (rule.name() + rule.marks() + rule.conditions()).toLowerCase();
        materials.stream().filter(all::contains).forEach(m -> faults.add("names the product " + m));
        if (all.contains("  ") || all.matches(".*\\b(obviously|simply|of course)\\b.*")) {
            faults.add("a double space, or talking down");
        }
    }

    private void references(RuleText rule, String mark, String text, List<String> faults) {
        Map<String, String> bound = rule.bound();
        for (Matcher m = REFERENCE.matcher(text); m.find();) {
            String type = bound.get(m.group(1));
            if (type == null) {
                faults.add("@" + mark + " names {" + m.group(1) + "}, which no condition binds");
            } else if (m.group(2) != null && !component(type, m.group(2))) {
                faults.add("@" + mark + " names {" + m.group(1) + "." + m.group(2) + "}, which no " + type + " has");
            }
        }
        if (text.replaceAll(REFERENCE.pattern(), "").matches(".*[{}].*")) {
            faults.add("@" + mark + " has a stray brace");
        }
    }

    private static boolean component(String type, String name) {
        return Arrays.stream(factType(type).getRecordComponents()).map(RecordComponent::getName)
                .anyMatch(name::equals);
    }

    private static Class<?> factType(String name) {
        try {
            return Class.forName(Fact.class.getPackageName() + "." + name);
        } catch (ClassNotFoundException e) {
            return Panel.class;
        }
    }

    private static Class<? extends Conclusion> conclusion(String name) {
        return factType(name).asSubclass(Conclusion.class);
    }
}
