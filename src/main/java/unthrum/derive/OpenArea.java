package unthrum.derive;

import unthrum.facts.Opening;
import unthrum.knowledge.Knowledge;
import unthrum.survey.OpeningKind;

/** The area of holes: round ones by their diameter, seam gaps by their length and a usual width. */
public final class OpenArea {

    private OpenArea() {
    }

    /** All holes of one entry together, m². */
    public static double of(Opening opening, Knowledge knowledge) {
        return opening.count() * (opening.kind() == OpeningKind.SEAM_GAP
                ? opening.size() * knowledge.number("usual/seam-gap-width")
                : Math.PI / 4 * opening.size() * opening.size());
    }
}
