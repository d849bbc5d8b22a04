package unthrum.survey;

/** The source that a panel stands next to. */
public enum NoiseSource {
    NONE, ENGINE, GEARBOX, EXHAUST, TYRES, ROAD, WIND, MOTOR, PUMP
}
