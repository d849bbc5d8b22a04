package unthrum.survey;

/** What drives the vehicle. */
public enum Drive {
    PETROL, DIESEL, ELECTRIC, HYBRID
}
