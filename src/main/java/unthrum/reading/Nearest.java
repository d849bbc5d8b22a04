package unthrum.reading;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds the known word that was probably meant. */
public final class Nearest {
    /** No known word is longer, and no typing mistake that is worth a guess. */
    private static final int LONGEST = 40;
    /** More words than this are no hint. */
    private static final int FEW = 4;

    private Nearest() {
    }

    /** The nearest of the known words, if one is near: one slip in three letters, two in seven, else three. */
    static Optional<String> to(String written, Collection<String> known) {
        return within(written.length() <= 3 ? 1 : written.length() <= 7 ? 2 : 3, written, known);
    }

    /** The nearest of the known words with no more than so many slips. */
    private static Optional<String> within(int slips, String written, Collection<String> known) {
        if (written.isEmpty() || written.length() > LONGEST) {
            return Optional.empty();
        }
        int best = 1 + slips;
        String nearest = null;
        for (String word : known) {
            int distance = word.equalsIgnoreCase(written) ? 0 : distance(plain(written), plain(word), best);
            if (distance < best && distance < word.length()) {
                best = distance;
                nearest = word;
            }
        }
        return Optional.ofNullable(nearest);
    }

    /** What to tell whoever wrote a word that is not known; empty when nothing like it is. */
    public static String remedy(String written, Collection<String> known) {
        List<String> others = NearWords.meant(written, known);
        if (!others.isEmpty() && !isSlip(written, known)) {
            return write(others);
        }
        List<String> like = like(written, known);
        return like.isEmpty() ? "" : "did you mean " + quoted(like) + "?";
    }

    /** The known words that were probably meant, by what people call them, by a slip of the pen or in part. */
    static List<String> meant(String written, Collection<String> known) {
        List<String> others = NearWords.meant(written, known);
        return others.isEmpty() || isSlip(written, known) ? like(written, known) : others;
    }

    /** Whether a known word differs by capitals, hyphens and the like only. */
    private static boolean isSlip(String written, Collection<String> known) {
        return known.stream().anyMatch(word -> plain(word).equals(plain(written)));
    }

    /** One slip away; else those of which it is a part or that are a part of it, unless they are many; else near. */
    private static List<String> like(String written, Collection<String> known) {
        List<String> slip = within(1, written, known).stream().toList();
        List<String> parts = slip.isEmpty() && !written.isEmpty() && written.length() <= LONGEST
                ? known.stream().filter(word -> holds(word, written) || holds(written, word)).toList() : slip;
        return parts.isEmpty() || parts.size() > FEW ? to(written, known).stream().toList() : parts;
    }

    /** Whether the words of one stand in the other: 'seat' in 'child-seat anchor'. */
    static boolean holds(String whole, String part) {
        return (' ' + plain(whole) + ' ').contains(' ' + plain(part) + ' ');
    }

    /** What to write, for a reader who wrote something of the same meaning. */
    static String write(List<String> words) {
        return "write " + quoted(words);
    }

    private static String quoted(List<String> words) {
        return Words.either(words.stream().map(word -> "'" + word + "'").toList());
    }

    static String didYouMean(String word) {
        return "did you mean '" + word + "'?";
    }

    /** A word without what a slip of the pen adds: capitals, hyphens. */
    static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replace('_', ' ').replace('-', ' ');
    }

    /**
     * Insertions, deletions, replacements and swaps of neighbours between two words (optimal string alignment:
     * Damerau, Communications of the ACM 7(3), 1964). Words whose lengths differ by the bound or more are not compared.
     */
    static int distance(String a, String b, int bound) {
        if (Math.abs(a.length() - b.length()) >= bound) {
            return bound;
        }
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = i == 0 || j == 0 ? i + j : step(a, b, d, i, j);
            }
        }
        return d[a.length()][b.length()];
    }

    private static int step(String a, String b, int[][] d, int i, int j) {
        int replace = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int least = Math.min(replace, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(least, d[i - 2][j - 2] + 1) : least;
    }
}
