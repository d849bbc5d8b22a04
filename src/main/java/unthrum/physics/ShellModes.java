package unthrum.physics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Frequencies of evenly curved rectangular bays; a flat bay is the case without curvature.
 *
 * <p>Edges free to slide: f² = f_bend² + Eh (β²/Rx + α²/Ry)² / [(α² + β²)² m'' 4π²] with α = mπ/a, β = nπ/b and
 * f_bend of the flat plate (Soedel; Leissa, NASA SP-288; from memory). The lowest mode is often not (1, 1). Edges
 * unable to slide: {@link FixedShell}, a Ritz solution.
 *
 * <p>Range: thin (thickness up to a tenth of the shorter side) and shallow (rise up to a tenth of its span). There
 * finite elements agree within 1.5 % (hinged, sliding) and 3 % (all others); at a fifth they differ by up to 23 %.
 */
public final class ShellModes {

    /** Half-waves searched each way. */
    static final int MOST_HALF_WAVES = 20;

    /** Thickness over shorter side up to which plates count as thin; from memory of plate textbooks. */
    static final double THIN = 0.1;

    /** Rise over span up to which the shallow theory is used, by the finite elements above; Vlasov allows a fifth. */
    static final double SHALLOW = 0.1;

    /** What {@link PlateModes} and the finite elements above leave. */
    static final FormulaError FLAT_ERROR = new FormulaError(0.005, 0.005);
    static final FormulaError CURVED_ERROR = new FormulaError(0.015, 0.03);

    private static final double ROUNDING = 1e-9;

    private ShellModes() {}

    /** The lowest mode over all half-waves, or why the theory does not hold for this bay. */
    public static Estimate<Mode> lowest(Skin skin, Bay bay, Support support) {
        return lowest(skin, bay, support, 0);
    }

    /**
     * The same for a bay that ends at ribs: they clamp that many (0 to 2) of its two ends across the length, however
     * softly the other edges are held.
     */
    public static Estimate<Mode> lowest(Skin skin, Bay bay, Support support, int ribbedEnds) {
        String reason = outside(skin, bay);
        if (!reason.isEmpty()) {
            return Estimate.outside(reason);
        }
        Mode sliding = lowestSliding(skin, bay, support.clamped(), ribbedEnds);
        if (Math.max(sliding.lengthHalfWaves(), sliding.widthHalfWaves()) == MOST_HALF_WAVES) {
            return Estimate.outside("the lowest mode has more half-waves than are searched");
        }
        boolean clamped = support.clamped() || ribbedEnds == 2;
        return Estimate.within(support.fixed() ? fixed(skin, bay, clamped, sliding) : sliding);
    }

    /** The lowest mode on edges unable to slide, from the one on edges that do; a flat bay does not tell them apart. */
    static Mode fixed(Skin skin, Bay bay, boolean clamped, Mode sliding) {
        return bay.isFlat() ? sliding : FixedShell.solve(skin, bay, clamped, sliding).mode();
    }

    /**
     * All modes up to a frequency (Hz), lowest first, on hinged or clamped edges free to slide. Edges unable to slide
     * lift those of a curved bay.
     */
    public static List<Mode> upTo(double frequency, Skin skin, Bay bay, boolean clamped) {
        List<Mode> modes = new ArrayList<>();
        for (int m = 1; PlateModes.hinged(skin, bay, m, 1) <= frequency; m++) {
            for (int n = 1; PlateModes.hinged(skin, bay, m, n) <= frequency; n++) {
                Mode mode = sliding(skin, bay, clamped, m, n);
                if (mode.frequency() <= frequency) {
                    modes.add(mode);
                }
            }
        }
        modes.sort(Comparator.comparingDouble(Mode::frequency));
        return modes;
    }

    /** One mode on edges free to slide in the skin's plane. */
    public static Mode sliding(Skin skin, Bay bay, boolean clamped, int m, int n) {
        double bending = clamped ? PlateModes.clamped(skin, bay, m, n) : PlateModes.hinged(skin, bay, m, n);
        return sliding(skin, bay, bending, m, n);
    }

    /** Bending alone rises with m and n, so that a row ends where it passes the lowest mode found. */
    private static Mode lowestSliding(Skin skin, Bay bay, boolean clamped, int ribbedEnds) {
        Mode lowest = new Mode(Double.POSITIVE_INFINITY, 1, 1, 1);
        for (int m = 1; m <= MOST_HALF_WAVES; m++) {
            BeamMode x = ends(ribbedEnds, m);
            for (int n = 1; n <= MOST_HALF_WAVES; n++) {
                BeamMode y = BeamMode.hinged(n);
                double bending = clamped ? PlateModes.clamped(skin, bay, m, n)
                        : PlateModes.frequency(skin, bay.length(), bay.width(), x, y);
                if (bending > lowest.frequency()) {
                    break;
                }
                Mode mode = sliding(skin, bay, bending, m, n);
                lowest = mode.frequency() < lowest.frequency() ? mode : lowest;
            }
        }
        return lowest;
    }

    private static BeamMode ends(int clampedEnds, int m) {
        return switch (clampedEnds) {
            case 0 -> BeamMode.hinged(m);
            case 1 -> BeamMode.hingedClamped(m);
            default -> BeamMode.clamped(m);
        };
    }

    private static Mode sliding(Skin skin, Bay bay, double bending, int m, int n) {
        double along = Math.pow(m / bay.length(), 2);
        double across = Math.pow(n / bay.width(), 2);
        double curvature = (across * bay.lengthCurvature() + along * bay.widthCurvature()) / (along + across);
        double stretching =
                skin.membraneStiffness() * curvature * curvature / (skin.surfaceDensity() * 4 * Math.PI * Math.PI);
        double square = bending * bending + stretching;
        return new Mode(Math.sqrt(square), bending * bending / square, m, n);
    }

    /** Why the theory does not hold; empty where it does. */
    static String outside(Skin skin, Bay bay) {
        if (skin.thickness() > THIN * bay.shorterSide()) {
            return "the skin is too thick for its span: thin-plate theory does not hold";
        }
        if (bay.riseOverSpan() > SHALLOW * (1 + ROUNDING)) {
            return "the curve is too deep for its span: shallow-shell theory does not hold";
        }
        return "";
    }
}
