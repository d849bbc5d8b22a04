package unthrum.derive;

import java.util.stream.Stream;
import unthrum.facts.Opening;
import unthrum.facts.Panel;
import unthrum.knowledge.Knowledge;
import unthrum.survey.OpeningKind;
import unthrum.survey.OpeningState;

/** The area of holes: round ones by their diameter, seam gaps by their length and a usual width. */
public final class OpenArea {

    private OpenArea() {
    }

    /** The share of a panel that those of the holes take that are open; one at most. */
    public static double share(Stream<Opening> openings, Panel panel, Knowledge knowledge) {
        double area = openings.filter(o -> o.state() == OpeningState.OPEN).mapToDouble(o -> of(o, knowledge)).sum();
        return Math.min(area / panel.area(), 1);
    }

    /** All holes of one entry together, m². */
    static double of(Opening opening, Knowledge knowledge) {
        return opening.count() * (opening.kind() == OpeningKind.SEAM_GAP
                ? opening.size() * knowledge.number("usual/seam-gap-width")
                : Math.PI / 4 * opening.size() * opening.size());
    }
}
