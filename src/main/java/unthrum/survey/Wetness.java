package unthrum.survey;

/** How wet the place gets. */
public enum Wetness {
    DRY, DAMP, WET
}
