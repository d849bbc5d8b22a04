package unthrum.report;

import java.nio.charset.Charset;
import unthrum.reasoning.Verdict;

/** How text is dressed: with or without colour, in Unicode or plain ASCII. No meaning hangs on it alone. */
public record Style(boolean colour, boolean unicode) {

    private static final String RESET = "\u001b[0m";

    public static final Style PLAIN = new Style(false, true);

    /** Unicode when the charset can write what plans need. */
    public static Style of(boolean colour, Charset charset) {
        return new Style(colour, charset.newEncoder().canEncode("²°×─é–"));
    }

    String heading(String text) {
        return dress("1", text);
    }

    String label(String text) {
        return dress("36", text);
    }

    String aside(String text) {
        return dress("2", text);
    }

    String verdict(Verdict verdict, String text) {
        return dress(switch (verdict) {
            case COVER, PATCH -> "32";
            case LEAVE_BARE -> "0";
            case HOLD -> "31";
            case ASK -> "33";
        }, text);
    }

    private String dress(String code, String text) {
        return colour && !text.isBlank() ? "\u001b[" + code + "m" + text + RESET : text;
    }

    String rule(int width) {
        return (unicode ? "─" : "-").repeat(width);
    }

    /** Spelled in the characters there are. */
    String spell(String text) {
        if (unicode) {
            return text;
        }
        String ascii = text.replace("°C", "degC").replace("²", "2").replace("³", "3").replace("×", "x")
                .replace("–", "-").replace("·", "-").replace("…", "...").replace("’", "'");
        return ascii.replaceAll("[^\\x00-\\x7F]", "?");
    }
}
