package unthrum.pieces;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import unthrum.survey.PanelEntry;
import unthrum.survey.Survey;

/**
 * Panels that a vehicle has on both sides: alike in size, and in name but for left and right. Both are surveyed from
 * the same end, so the right one's pieces are the mirror image of what is drawn for the left.
 */
final class Twins {

    private Twins() {
    }

    static boolean isMirrored(PanelEntry panel, Survey survey) {
        List<String> words = words(panel.panel());
        String other = words.stream().map(w -> w.equals("right") ? "left" : w).collect(Collectors.joining(" "));
        return words.contains("right") && survey.panels().stream().anyMatch(p -> p.size().equals(panel.size())
                && String.join(" ", words(p.panel())).equals(other));
    }

    private static List<String> words(String name) {
        return Arrays.asList(name.toLowerCase(java.util.Locale.ROOT).split("[ _-]+"));
    }
}
