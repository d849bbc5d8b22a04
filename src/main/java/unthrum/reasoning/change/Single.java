package unthrum.reasoning.change;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import unthrum.survey.CoverKind;
import unthrum.survey.FixingKind;
import unthrum.survey.Hazard;
import unthrum.survey.Loose;
import unthrum.survey.Missing;
import unthrum.survey.MovingPart;
import unthrum.survey.OpeningKind;
import unthrum.survey.PanelEntry;

/** What a list that nobody wrote may turn out to hold: nothing, or one entry of each kind. */
final class Single {

    private Single() {
    }

    static List<Object> of(String key) {
        Stream<?> each = switch (key) {
            case "openings" -> Arrays.stream(OpeningKind.values()).map(kind -> new PanelEntry.Opening(kind,
                    Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
            case "fixings" -> Arrays.stream(FixingKind.values()).map(kind -> new PanelEntry.Fixing(kind,
                    Optional.empty(), Optional.empty(), Optional.empty()));
            case "covers" -> Arrays.stream(CoverKind.values()).map(kind -> new PanelEntry.Cover(kind, Optional.empty()));
            case "moving" -> Arrays.stream(MovingPart.values());
            case "behind" -> Arrays.stream(Hazard.values());
            case "missing" -> Arrays.stream(Missing.values());
            case "loose" -> Arrays.stream(Loose.values());
            default -> throw new IllegalArgumentException("no list '" + key + "'");
        };
        return Stream.concat(Stream.<Object>of(List.of()), each.map(List::of)).toList();
    }
}
