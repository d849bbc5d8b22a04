package unthrum.survey;

/** A part that must come off for service. */
public enum CoverKind {
    BATTERY_HATCH, GEARBOX_COVER, PUMP_HATCH, INSPECTION_PLATE, SPARE_WHEEL_COVER, SERVICE_PLUG_COVER
}
