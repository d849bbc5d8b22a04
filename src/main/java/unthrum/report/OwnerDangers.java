package unthrum.report;

import java.util.Optional;
import unthrum.facts.Caution.Danger;

/** The dangers that stay with the vehicle, told to its owner; those of the work itself end with it. */
final class OwnerDangers {
    private OwnerDangers() {
    }

    static Optional<String> of(Danger danger) {
        return Optional.ofNullable(switch (danger) {
            case AIRBAG -> "Airbags need their whole path: hang and stick nothing there; only qualified people work on them.";
            case BELT_PRETENSIONER -> "Belt tensioners hold a charge: only qualified people work on them.";
            case HIGH_VOLTAGE -> "Orange cables and battery casings are for licensed people alone; cover none of their vents.";
            case FUEL -> "Fuel parts are near: no drill, no flame, and keep tank and filler vents free.";
            case GAS -> "Gas vents and flues keep the clearances that local gas rules set: cover none of them.";
            case HOT_PARTS, FIRE -> "Heat shields must stay fitted and tight: without them the layers burn.";
            case HAZARDOUS_PADS -> "Old coatings may hold hazardous fibres or tar: do not scrape, sand or heat them.";
            case HIDDEN_LINES -> "Cables or pipes run hidden: do not drill before somebody has looked.";
            case BOLTED_SAFETY_PARTS -> "Seat and belt bolts stand metal on metal: put nothing soft under them.";
            case CONTROLS -> "Pedals and controls need their whole travel: no loose mat, nothing thicker than what lies there.";
            case SOLVENT_VAPOUR, PAINT_DUST, SHARP_EDGES, HEAVY_LIFTING, OVERHEAD_WORK, VEHICLE_RULES -> null;
        });
    }
}
