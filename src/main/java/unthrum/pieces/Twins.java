package unthrum.pieces;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import unthrum.survey.PanelEntry;
import unthrum.survey.Survey;
import unthrum.survey.Zone;

/**
 * Upright panels that a vehicle has on both sides: alike in size, and in name but for left and right. Both are surveyed
 * from the same end, so the right one's pieces are the mirror image of what is drawn for the left. What lies or hangs is
 * seen from one side alone, and is cut as it was measured.
 */
final class Twins {

    private static final Set<Zone> UPRIGHT = EnumSet.of(Zone.SIDE, Zone.PILLAR, Zone.DOOR, Zone.SLIDING_DOOR,
            Zone.REAR_DOOR, Zone.WHEEL_ARCH, Zone.SILL);

    private Twins() {
    }

    static boolean isMirrored(PanelEntry panel, Survey survey) {
        List<String> words = words(panel.panel());
        String other = words.stream().map(w -> w.equals("right") ? "left" : w).collect(Collectors.joining(" "));
        return UPRIGHT.contains(panel.zone()) && words.contains("right") && survey.panels().stream().anyMatch(p -> p.size().equals(panel.size())
                && String.join(" ", words(p.panel())).equals(other));
    }

    private static List<String> words(String name) {
        return Arrays.asList(name.toLowerCase(java.util.Locale.ROOT).split("[ _-]+"));
    }
}
