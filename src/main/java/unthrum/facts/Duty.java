package unthrum.facts;

/** Work that must be done at a place. */
public record Duty(Place place, Work work) implements Conclusion {

    /** The kinds of work, in the order of a job. */
    public enum Work {
        TEST_OLD_LAYER, REMOVE_OLD_LAYER, REPAIR, CURE_RUST, REPAINT, CLEAR_DRAIN, REFIT_SHIELD, FIX_RATTLE,
        VACUUM, WASH, DRY, SOLVENT_WIPE, WARM_SURFACE, WAIT_FOR_CURE,
        MEASURE_AND_MARK, DRY_LAY, PUNCH_CLEARANCE, CUT_ALONG_EDGE,
        ROLL_DOWN, TAP_AGAIN, CLOSE_HOLE, KEEP_OPEN, TAPE_JOINTS, SEAL_EDGES, BOND_EDGES, BOND_LIGHTLY,
        USE_HOT_ADHESIVE, KEEP_TRAVEL, KEEP_CLEAR, WEIGH_LID, BIND_EDGE, WAX_AFTER,
        REFIT_TRIM, CHECK_TRAVEL, CHECK_DRAINS, LIGHT_TEST, ROAD_TEST, PHOTOGRAPH, TELL_OWNER
    }
}
