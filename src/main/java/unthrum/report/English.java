package unthrum.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The little grammar that sentences need. */
final class English {

    private static final Pattern NUMBERED = Pattern.compile("([a-z][a-z -]*) (\\d+)");
    private static final List<String> ORDINALS = List.of("first", "second", "third", "fourth", "fifth", "sixth",
            "seventh", "eighth", "ninth");
    /** Words that take no article: one does not stick 'a damping'. */
    private static final Set<String> MASS_NOUNS = Set.of("damping", "insulation");

    private English() {
    }

    /** A clause as a sentence: capital first, full stop last. */
    static String sentence(String clause) {
        String end = clause.endsWith(".") ? "" : ".";
        return capital(clause) + end;
    }

    static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    /** 'a, b and c'. */
    static String and(List<String> words) {
        if (words.size() < 2) {
            return String.join("", words);
        }
        return String.join(", ", words.subList(0, words.size() - 1)) + " and " + words.get(words.size() - 1);
    }

    /** Numbered things of one kind named together: 'bays 1, 2 and 4'; others one by one. */
    static String andNumbered(List<String> names) {
        return andNumbered(names, n -> "");
    }

    /** The same with a note behind each: 'bays 1 (490 mm) and 2 (520 mm)'. */
    static String andNumbered(List<String> names, Function<String, String> note) {
        List<Matcher> numbered = names.stream().map(NUMBERED::matcher).filter(Matcher::matches).toList();
        boolean alike = names.size() > 1 && numbered.size() == names.size()
                && numbered.stream().map(m -> m.group(1)).distinct().count() == 1;
        if (!alike) {
            return and(names.stream().map(n -> n + note.apply(n)).toList());
        }
        List<String> numbers = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            numbers.add(numbered.get(i).group(2) + note.apply(names.get(i)));
        }
        return plural(numbered.get(0).group(1)) + " " + and(numbers);
    }

    static String plural(String noun) {
        return noun.matches(".*(ch|sh|s|x)") ? noun + "es" : noun + "s";
    }

    /** '1 panel', '3 panels'. */
    static String count(int n, String noun) {
        return n + " " + (n == 1 ? noun : plural(noun));
    }

    static String ordinal(int n) {
        return n <= ORDINALS.size() ? ORDINALS.get(n - 1) : n + "th";
    }

    /** The noun with its article: 'a barrier', 'an absorber', 'damping'. */
    static String withArticle(String noun) {
        if (MASS_NOUNS.contains(noun)) {
            return noun;
        }
        return (startsWithVowel(noun) ? "an " : "a ") + noun;
    }

    /** Puts a word behind what was said so far, minding the article that stands there. */
    static void append(StringBuilder said, String word) {
        String before = said.toString();
        if (before.equals("a ") || before.endsWith(" a ")) {
            said.setLength(said.length() - 2);
            said.append(withArticle(word));
        } else if (before.endsWith("the ") && (word.startsWith("the ") || word.startsWith("each "))) {
            said.setLength(said.length() - 4);
            said.append(word);
        } else {
            said.append(word);
        }
    }

    private static boolean startsWithVowel(String word) {
        return !word.isEmpty() && "aeiou".indexOf(word.charAt(0)) >= 0;
    }
}
