package unthrum.report;

import unthrum.facts.Duty.Work;

/** The trade's work as something done, for an owner who never did it. */
final class OwnerWork {
    private OwnerWork() {
    }

    static String of(Work work) {
        return switch (work) {
            case TEST_OLD_LAYER -> "testing the old coating for hazardous fibres and tar";
            case REPAIR -> "mending what was damaged";
            case REPAINT -> "making the paint good";
            case CURE_RUST -> "stopping the rust";
            case CLEAR_DRAIN -> "clearing the drains";
            case REFIT_SHIELD -> "putting the heat shield back";
            case FIX_RATTLE -> "fixing what rattles";
            case REMOVE_OLD_LAYER -> "taking off the old layer";
            case VACUUM, WASH, SOLVENT_WIPE -> "cleaning the metal before sticking";
            case DRY, WARM_SURFACE -> "drying and warming the metal before sticking";
            case WAIT_FOR_CURE -> "letting fresh paint harden";
            case MEASURE_AND_MARK, DRY_LAY -> "laying the pieces out before sticking";
            case PUNCH_CLEARANCE -> "cutting the layers free round bolts and clips";
            case CUT_ALONG_EDGE -> "cutting the layers along the edges that must stay free";
            case ROLL_DOWN -> "rolling the pieces down over their whole face";
            case TAP_AGAIN -> "tapping the metal again";
            case CLOSE_HOLE -> "closing a hole";
            case KEEP_OPEN -> "keeping open what must stay open";
            case TAPE_JOINTS, SEAL_EDGES, BOND_EDGES -> "closing joints and edges";
            case BOND_LIGHTLY -> "sticking so lightly that it comes off again";
            case USE_HOT_ADHESIVE -> "using the adhesive that bears heat";
            case KEEP_TRAVEL, CHECK_TRAVEL -> "trying everything that moves through its whole way";
            case KEEP_CLEAR -> "keeping layers away from what must stay free";
            case WEIGH_LID -> "weighing the lid against its struts";
            case BIND_EDGE -> "binding edges that can be seen";
            case WAX_AFTER -> "waxing the cavities afterwards";
            case REFIT_TRIM -> "putting the trim back";
            case CHECK_DRAINS -> "trying the drains with water";
            case LIGHT_TEST -> "looking for light or water through closed holes";
            case ROAD_TEST -> "a drive on the same road before and after";
            case PHOTOGRAPH -> "photographing the bare metal";
            case TELL_OWNER -> "telling you what concerns you as the owner";
        };
    }
}
