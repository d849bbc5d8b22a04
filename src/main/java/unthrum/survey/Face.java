package unthrum.survey;

/** What the clearance is measured to. */
public enum Face {
    TRIM, LINING, CARPET, MOULDED_MAT, FLOOR_BOARD, DRAWER, WINDOW_GLASS, SEAT, NOTHING
}
