package unthrum.survey;

/** What an earlier hand left on the panel. */
public enum OldLayer {
    NONE, SOUND_PADS, LOOSE_PADS, UNKNOWN_PADS, UNDERSEAL
}
