package unthrum.survey;

/** What moves near a panel. */
public enum MovingPart {
    PEDALS,
    THROTTLE_LINKAGE,
    HANDBRAKE,
    SEAT_TRAVEL,
    WINDOW_GLASS,
    WINDOW_REGULATOR,
    DOOR_LATCH,
    BELT_REEL,
    GEAR_LINKAGE
}
