package unthrum.survey;

import java.util.Optional;
import unthrum.reading.Quantity;

/** Reports rises that do not go together: two ways on a crown, near and far on a roll. */
final class PanelCurve {
    private PanelCurve() {
    }

    /** Whether the two rises, where there are any, may stand; else it is reported. */
    static boolean fits(PanelCheck check, PanelEntry.Shape shape) {
        boolean bothWays = shape.riseAlong().isPresent() || shape.riseAcross().isPresent();
        if (bothWays && shape.curve() != Curve.CROWNED) {
            return refuse(check, "shape", "rises along and across on a panel that is not crowned",
                    "curve: crowned, or one rise");
        }
        if (bothWays && (shape.riseAlong().isEmpty() || shape.riseAcross().isEmpty())) {
            return refuse(check, "shape", "a rise one way only", "both 'rise along' and 'rise across', or one 'rise'");
        }
        if (bothWays && (shape.rise().isPresent() || shape.radius().isPresent())) {
            return refuse(check, "shape", "rises along and across beside a rise or radius of the whole",
                    "either both or one");
        }
        if (shape.farRise().isPresent() && (shape.curve() != Curve.ROLLED || shape.rise().isEmpty())) {
            return refuse(check, "shape.far rise", "a far rise without a rise of a rolled panel",
                    "curve: rolled, with the near end's rise");
        }
        return low(check, "shape.rise along", shape.riseAlong(), check.first())
                && low(check, "shape.rise across", shape.riseAcross(), check.second())
                && low(check, "shape.far rise", shape.farRise(), check.second());
    }

    private static boolean low(PanelCheck check, String key, Optional<Quantity> rise, double side) {
        return rise.isEmpty() || rise.get().si() <= side / 2
                || refuse(check, key, "a rise of " + rise.get(),
                        "no more than half that side, " + PanelCheck.length(side / 2));
    }

    private static boolean refuse(PanelCheck check, String key, String found, String expected) {
        check.report(key, found, expected, "");
        return false;
    }
}
