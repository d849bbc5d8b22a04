package unthrum.reasoning.change;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
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

    /** @param reckoned whether a kind is to be reckoned with on the panel */
    static List<Object> of(String key, Predicate<Enum<?>> reckoned) {
        Enum<?>[] kinds = switch (key) {
            case "openings" -> OpeningKind.values();
            case "fixings" -> FixingKind.values();
            case "covers" -> CoverKind.values();
            case "moving" -> MovingPart.values();
            case "behind" -> Hazard.values();
            case "missing" -> Missing.values();
            case "loose" -> Loose.values();
            default -> throw new IllegalArgumentException("no list '" + key + "'");
        };
        return Stream.concat(Stream.<Object>of(List.of()), Arrays.stream(kinds).filter(reckoned)
                .map(kind -> List.of(of(key, kind)))).toList();
    }

    /** An entry of which only the kind is known. */
    static Object of(String key, Object kind) {
        return switch (key) {
            case "openings" -> new PanelEntry.Opening((OpeningKind) kind, Optional.empty(), Optional.empty(),
                    Optional.empty(), Optional.empty(), Optional.empty());
            case "fixings" -> new PanelEntry.Fixing((FixingKind) kind, Optional.empty(), Optional.empty(),
                    Optional.empty());
            case "covers" -> new PanelEntry.Cover((CoverKind) kind, Optional.empty(), Optional.empty());
            default -> kind;
        };
    }
}
