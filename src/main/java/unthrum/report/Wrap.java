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
        String line = "";
        for (String word : UNIT.matcher(text).replaceAll(String.valueOf(HARD)).split(" +")) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > width) {
                lines.add(line);
                line = "";
            }
            line = line.isEmpty() ? word : line + " " + word;
            for (; line.length() > width; line = line.substring(width)) {
                lines.add(line.substring(0, width));
            }
        }
        lines.add(line);
        return lines.stream().map(l -> l.replace(HARD, ' ')).toList();
    }

    static String pad(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }

    static String padLeft(String text, int width) {
        return " ".repeat(Math.max(0, width - text.length())) + text;
    }
}
