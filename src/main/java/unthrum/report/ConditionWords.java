package unthrum.report;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import unthrum.facts.Fact;
import unthrum.knowledge.Knowledge;
import unthrum.knowledge.Measuring;
import unthrum.reading.Dimension;
import unthrum.reading.Words;
import unthrum.reasoning.SurveyKeys;
import unthrum.reasoning.engine.Components;
import unthrum.reasoning.engine.Silence.Looked;
import unthrum.reasoning.engine.Silence.Outcome;
import unthrum.reasoning.engine.Silence.Value;

/** A condition that was not met, as what it would have needed, with what was found. */
record ConditionWords(Knowledge knowledge) {

    private static final Pattern TEST = Pattern.compile("(\\w+)\\s*(==|!=|>=|<=|>|<|not in|in|not contains|contains)\\s*(.+)");
    private static final Pattern CONSTANT = Pattern.compile("[A-Z]\\w*\\.([A-Z_]+)");

    /** 'clearance above 8 mm (it is 5 mm, 3 mm short)', 'aim summer heat (it is road drumming)'. */
    String of(Looked looked) {
        String kind = Words.key(looked.kind()).strip();
        if (looked.outcome() == Outcome.NOTHING_TO_LOOK_AT || looked.values().isEmpty()) {
            return thing(kind, looked);
        }
        Matcher test = TEST.matcher(looked.text());
        if (!test.matches()) {
            return "another " + kind;
        }
        if (test.group(2).endsWith("contains")) {
            return test.group(2).startsWith("not") ? "it to be stated" : "it to be unknown";
        }
        String constants = constants(test.group(3));
        return kind.equals("aimed at") ? constants + " among the client's aims"
                : kind.equals("want") && !constants.isEmpty() ? constants + " to be wanted"
                : needed(test, looked) + found(looked);
    }

    /** What has to be there; a condition that a thing must not be there fails by the one that was found. */
    private static String thing(String kind, Looked looked) {
        boolean unwelcome = looked.outcome() == Outcome.FAILED;
        String constants = constants(looked.text());
        if (!constants.isEmpty() && kind.equals("want")) {
            return (unwelcome ? "no " : "") + constants + " to be wanted";
        }
        if (!constants.isEmpty() && kind.equals("opening")) {
            return unwelcome ? "no " + constants : English.withArticle(constants);
        }
        String named = unwelcome ? "no such " + kind : switch (kind) {
            case "want" -> "another layer that is wanted";
            case "aimed at" -> "another aim of the client";
            case "decoupled" -> "room for foam under a barrier";
            case "leak" -> "an open hole that may be closed";
            default -> English.withArticle(kind);
        };
        return named + (constants.isEmpty() ? "" : " (" + constants + ")");
    }

    private String needed(Matcher test, Looked looked) {
        String operator = test.group(2);
        String constants = constants(test.group(3));
        String right = !constants.isEmpty() ? constants : test.group(3).equals("true") ? "yes"
                : test.group(3).equals("false") ? "no" : second(looked);
        return key(looked) + switch (operator) {
            case ">" -> " above ";
            case ">=" -> " of at least ";
            case "<" -> " below ";
            case "<=" -> " of at most ";
            case "!=", "not in" -> " other than ";
            default -> " to be ";
        } + right;
    }

    private String key(Looked looked) {
        Value value = looked.values().get(0);
        String key = value.owner() instanceof Fact fact ? SurveyKeys.of(fact.getClass(), value.component())
                : Words.key(value.component());
        return knowledge.measuring().stream().filter(m -> m.fact().equals(key)).findFirst().map(Measuring::called)
                .orElse(looked.margin().isPresent() ? key : "the " + key);
    }

    private static String second(Looked looked) {
        return looked.values().size() < 2 ? "another" : shown(looked.values().get(1));
    }

    private static String found(Looked looked) {
        Value value = looked.values().get(0);
        if (value.component().equals("assumed")) {
            return "";
        }
        String assumed = looked.assumed() ? ", assumed" : "";
        String margin = looked.margin().isPresent() && looked.margin().getAsDouble() != 0
                ? ", " + Components.dimension(value.owner().getClass(), value.component()).orElse(Dimension.NUMBER)
                        .show(Math.abs(looked.margin().getAsDouble())) + " away" : "";
        return " (it is " + shown(value) + assumed + margin + ")";
    }

    private static String shown(Value value) {
        return Sentences.shown(value.owner(), value.component());
    }

    private static String constants(String text) {
        Matcher constant = CONSTANT.matcher(text);
        List<String> words = constant.results().map(r -> r.group(1).toLowerCase(Locale.ROOT).replace('_', ' ')).toList();
        int last = words.size() - 1;
        return last < 1 ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
    }
}
