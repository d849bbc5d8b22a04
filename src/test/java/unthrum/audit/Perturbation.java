package unthrum.audit;

import java.util.List;
import unthrum.built.BuiltPanel;

/** One thing on one panel of a sound job done otherwise, with the findings that it justifies and no others. */
record Perturbation(BuiltPanel built, List<Expected> expected) {

    /** Ways to go wrong. */
    enum Kind {
        THINNER, ANOTHER_MATERIAL, COVERS_LESS, COVERS_ALL, LAYER_LEFT_OUT, LAYER_MORE, HELD_OTHERWISE, OVER_A_PART,
        WORK_UNDONE, WORK_UNSHOWN, HOLE_OPEN, DRAINS_BLOCKED, TRAVEL_TOUCHES, TRIM_FORCED, STILL_RINGS, NOT_TAPPED,
        NOT_RECORDED;

        boolean isAboutLayers() {
            return compareTo(OVER_A_PART) <= 0;
        }
    }
}
