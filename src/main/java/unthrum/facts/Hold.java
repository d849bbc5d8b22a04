package unthrum.facts;

/** A place that cannot be reached or prepared yet; treatment waits until the obstacle is gone. */
public record Hold(Place place, Obstacle obstacle) implements Conclusion {

    /** What treatment waits for. */
    public enum Obstacle {
        OUT_OF_REACH, CANNOT_BE_CLEANED, LEAK, LIVE_RUST, LOOSE_PAINT, UNTESTED_PADS, FRESH_PAINT, SHIELD_MISSING,
        NOT_LOOKED_AT
    }
}
