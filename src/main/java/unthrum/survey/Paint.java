package unthrum.survey;

/** The state of the paint. */
public enum Paint {
    SOUND, FRESH, FLAKING, BARE_METAL
}
