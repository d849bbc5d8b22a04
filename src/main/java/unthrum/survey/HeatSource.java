package unthrum.survey;

/** Where the heat on a panel comes from. */
public enum HeatSource {
    NONE, SUN, EXHAUST, ENGINE, TURBO, CATALYST, HEATER
}
