package unthrum.survey;

/** What lies on, in or behind a panel that work could hurt or that could hurt the worker. */
public enum Hazard {
    LOOM,
    FUEL_LINE,
    BRAKE_LINE,
    FUEL_TANK,
    FILLER_NECK,
    AIRBAG,
    CURTAIN_AIRBAG,
    BELT_PRETENSIONER,
    ORANGE_CABLE,
    TRACTION_BATTERY,
    GAS_LOCKER,
    HEATER_FLUE
}
