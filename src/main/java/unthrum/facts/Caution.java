package unthrum.facts;

/** A danger to be shown with a panel or with the job. */
public record Caution(Place place, Danger danger) implements Conclusion {

    /** The dangers of the trade. */
    public enum Danger {
        SOLVENT_VAPOUR, AIRBAG, BELT_PRETENSIONER, HIGH_VOLTAGE, FUEL, GAS, FIRE, HOT_PARTS, HAZARDOUS_PADS, PAINT_DUST,
        HIDDEN_LINES, BOLTED_SAFETY_PARTS, CONTROLS, SHARP_EDGES, HEAVY_LIFTING, OVERHEAD_WORK, VEHICLE_RULES
    }
}
