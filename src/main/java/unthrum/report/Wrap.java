package unthrum.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Breaks text into lines between words; a number stays with its unit. */
final class Wrap {

    private static final Pattern UNIT = Pattern.compile(
            "(?<=\\d) (?=(mm|m²|kg|kg/m²|°C|Hz|dB|%|g|W/m²|m|mm/min|MPa|EUR|GBP|USD|degC|m2|kg/m2|W/m2)([ ,.;:)]|$))");
    private static final char HARD = '\u00a0';

    private Wrap() {
    }

    static List<String> lines(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : UNIT.matcher(text).replaceAll(String.valueOf(HARD)).split(" +")) {
            if (line.length() > 0 && line.length() + 1 + word.length() > width) {
                lines.add(line.toString().replace(HARD, ' '));
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString().replace(HARD, ' '));
        return lines;
    }

    static String pad(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }

    static String padLeft(String text, int width) {
        return " ".repeat(Math.max(0, width - text.length())) + text;
    }
}
