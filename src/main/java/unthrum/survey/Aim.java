package unthrum.survey;

/** What the client wants to gain; the order in the survey is the order of weight. */
public enum Aim {
    ROAD_DRUMMING,
    ENGINE_NOISE,
    EXHAUST_DRONE,
    WIND_NOISE,
    RAIN_NOISE,
    RATTLES,
    SUMMER_HEAT,
    WINTER_COLD,
    CONDENSATION
}
