package unthrum.reading;

/** The one way to write a number: an optional minus, digits, and a point with digits. */
final class NumberText {
    private NumberText() {
    }

    /** The same as a regular expression, for the schema. */
    static String pattern(boolean mayBeNegative) {
        return (mayBeNegative ? "-?" : "") + "(0|[1-9][0-9]*)(\\.[0-9]+)?";
    }

    static boolean isNumber(String text) {
        return !text.isEmpty() && length(text) == text.length();
    }

    /** How many characters at the start of the text are a number; 0 when there is none. */
    static int length(String text) {
        int start = text.startsWith("-") ? 1 : 0;
        int whole = digits(text, start);
        boolean padded = whole > start + 1 && text.charAt(start) == '0';
        if (whole == start || padded) {
            return 0;
        }
        boolean point = whole < text.length() && text.charAt(whole) == '.';
        int end = point ? digits(text, whole + 1) : whole;
        return point && end == whole + 1 ? whole : end;
    }

    private static int digits(String text, int from) {
        int i = from;
        while (i < text.length() && text.charAt(i) >= '0' && text.charAt(i) <= '9') {
            i++;
        }
        return i;
    }
}
