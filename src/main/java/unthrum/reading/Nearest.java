package unthrum.reading;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds the known word that was probably meant. */
public final class Nearest {
    /** No known word is longer, and no typing mistake that is worth a guess. */
    private static final int LONGEST = 40;

    private Nearest() {
    }

    /** The nearest of the known words, if one is near: one slip in three letters, two in seven, else three. */
    static Optional<String> to(String written, Collection<String> known) {
        if (written.isEmpty() || written.length() > LONGEST) {
            return Optional.empty();
        }
        int best = 1 + (written.length() <= 3 ? 1 : written.length() <= 7 ? 2 : 3);
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

    /** The nearest known word as a question for the reader of a problem; empty when none is near. */
    public static String remedy(String written, Collection<String> known) {
        return to(written, known).map(Nearest::didYouMean).orElse("");
    }

    /** What to write, for a reader who wrote something of the same meaning. */
    static String write(List<String> words) {
        return "write " + Words.either(words.stream().map(word -> "'" + word + "'").toList());
    }

    static String didYouMean(String word) {
        return "did you mean '" + word + "'?";
    }

    private static String plain(String word) {
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
