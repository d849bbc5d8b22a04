package unthrum.physics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import unthrum.physics.Course.Stretch;

/**
 * A panel rolled around its width whose rise goes evenly from one end of its length to the other.
 *
 * <p>Range: thin, and the greater rise up to a tenth of the width. Against 8 finite-element panels the first frequency
 * reads from 0.4 % too low to 2 % too high. An even curve of the mean rise would be up to 17 % off. Source of the
 * method: {@link StripShell}.
 *
 * @param length the straight side, m
 * @param width the curved side, m
 * @param nearRise of the middle over the edges at the near end, m
 * @param farRise the same at the far end, m
 */
public record TaperedRoll(double length, double width, double nearRise, double farRise) {

    /** By the finite elements above, rounded up. */
    public static final FormulaError ERROR = new FormulaError(0.025, 0.005);

    private static final int STRIPS = 20;
    private static final int STRETCHES = 5;

    /** The evenly curved bay of the mean rise. */
    public Bay mean() {
        return Bay.rolled(length, width, (nearRise + farRise) / 2);
    }

    /** The lowest mode with edges held like this, or why it cannot be told. */
    public Estimate<Mode> first(Skin skin, Support support) {
        Bay steepest = Bay.rolled(length, width, Math.max(nearRise, farRise));
        String reason = ShellModes.outside(skin, steepest);
        return reason.isEmpty() ? Estimate.within(StripShell.lowest(skin, profile(), course(), support))
                : Estimate.outside(reason);
    }

    /** Softest and stiffest edges as computed; between them those of the mean rise, as far as they lie between. */
    public Estimate<Ringing> ringing(Skin skin) {
        Estimate<Mode> soft = first(skin, Support.HINGED_SLIDING);
        Estimate<Ringing> even = Ringing.of(skin, mean());
        if (!soft.isWithin() || !even.isWithin()) {
            return Estimate.outside(soft.isWithin() ? even.reason() : soft.reason());
        }
        Mode stiff = first(skin, Support.CLAMPED_FIXED).value();
        Map<Support, Mode> modes = new EnumMap<>(Support.class);
        even.value().first().forEach((support, mode) -> modes.put(support, between(soft.value(), mode, stiff)));
        modes.put(Support.HINGED_SLIDING, soft.value());
        modes.put(Support.CLAMPED_FIXED, stiff);
        return Estimate.within(new Ringing(modes, ERROR));
    }

    private static Mode between(Mode soft, Mode mode, Mode stiff) {
        return mode.frequency() < soft.frequency() ? soft : mode.frequency() > stiff.frequency() ? stiff : mode;
    }

    private Profile profile() {
        double[] at = new double[STRIPS + 1];
        double[] height = new double[STRIPS + 1];
        Arrays.setAll(at, i -> width * i / STRIPS);
        Arrays.setAll(height, i -> 1 - Math.pow(2.0 * i / STRIPS - 1, 2));
        return new Profile(at, height);
    }

    private Course course() {
        double taper = (farRise - nearRise) / length;
        List<Stretch> stretches = new ArrayList<>();
        for (int i = 0; i < STRETCHES; i++) {
            stretches.add(Course.varied(length * i / STRETCHES, length * (i + 1) / STRETCHES,
                    x -> nearRise + taper * x, x -> taper));
        }
        return new Course(stretches, false);
    }
}
