package unthrum.reading;

import java.util.Comparator;
import java.util.regex.Pattern;

/**
 * One mistake in a file: where it is, what stands there, what is expected, and the likely remedy.
 *
 * @param file     the file as the user named it
 * @param line     counted from 1; 0 when the file as a whole is meant
 * @param column   counted from 1; 0 when the file as a whole is meant
 * @param found    what stands there
 * @param expected what ought to stand there
 * @param remedy   what to do, or the nearest known word; empty when there is nothing to propose
 */
public record Problem(String file, int line, int column, String found, String expected, String remedy) {
    static final Comparator<Problem> BY_PLACE =
            Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column);

    private static final Pattern QUOTED = Pattern.compile("'[^']*'");
    private static final Pattern NUMBER = Pattern.compile("[0-9]+([.,][0-9]+)*");

    static Problem ofFile(String file, String found, String expected, String remedy) {
        return new Problem(file, 0, 0, found, expected, remedy);
    }

    /** What one mistake has in common with others like it: all but the words and numbers that stand there. */
    String kind() {
        return NUMBER.matcher(QUOTED.matcher(found).replaceAll("''") + "; " + expected + "; " + remedy).replaceAll("0");
    }

    /** {@code file:line:column: what stands there; what is expected; what to do}. */
    @Override
    public String toString() {
        String place = line == 0 ? file : file + ":" + line + ":" + column;
        String end = remedy.isEmpty() ? "" : "; " + remedy;
        return place + ": " + found + "; expected " + expected + end;
    }
}
