package unthrum.report;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import unthrum.facts.Bay;
import unthrum.facts.Fact;
import unthrum.facts.Fixing;
import unthrum.facts.Opening;
import unthrum.facts.Place;
import unthrum.derive.PanelFacts;

/**
 * Names places as a fitter would. Where the reader knows which panel is spoken of, it is the panel, its parts go
 * without its name, a panel of one bay is not said to have bays, and the only cable hole is the cable hole.
 */
public final class PlaceNames {

    static final String PANEL = "the panel";
    private static final Pattern NUMBERED = Pattern.compile("(.+) (\\d+)");

    private final Optional<PanelFacts> context;

    private PlaceNames(Optional<PanelFacts> context) {
        this.context = context;
    }

    /** Names that stand anywhere: 'bay 2 of roof-middle'. */
    public static PlaceNames anywhere() {
        return new PlaceNames(Optional.empty());
    }

    /** Names for text about one panel: 'the panel', 'bay 2'. */
    public static PlaceNames on(PanelFacts panel) {
        return new PlaceNames(Optional.of(panel));
    }

    public String of(Place place) {
        if (place.isVehicle()) {
            return "the vehicle";
        }
        Optional<PanelFacts> here = context.filter(c -> c.panel().equals(place.panel()));
        if (place.isWholePanel()) {
            return here.isPresent() ? PANEL : place.panel();
        }
        return here.map(facts -> local(place, facts)).orElseGet(() -> article(place.part()) + " of " + place.panel());
    }

    private static String local(Place place, PanelFacts facts) {
        Matcher numbered = NUMBERED.matcher(place.part());
        if (!numbered.matches() || place.part().contains(" at ")) {
            return article(place.part());
        }
        String kind = numbered.group(1);
        List<Fact> alike = facts.facts().stream().filter(f -> isNumbered(f.place(), kind)).toList();
        if (alike.size() != 1) {
            return place.part();
        }
        if (alike.get(0) instanceof Bay) {
            return PANEL;
        }
        return (count(alike.get(0)) > 1 ? "each " : "the ") + kind;
    }

    private static boolean isNumbered(Place place, String kind) {
        Matcher numbered = NUMBERED.matcher(place.part());
        return numbered.matches() && numbered.group(1).equals(kind);
    }

    private static int count(Fact fact) {
        if (fact instanceof Opening opening) {
            return opening.count();
        }
        return fact instanceof Fixing fixing ? fixing.count() : 1;
    }

    private static String article(String part) {
        return part.contains(" at ") ? "the " + part : part;
    }
}
