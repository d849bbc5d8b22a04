package unthrum.physics;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * What a bay may ring at: its first mode for each way its edges may be held. Edges are never ideal, so the answer is a
 * range, from hinged to clamped and, on a curved bay, from sliding to fixed, which matters more.
 *
 * @param first the first mode by support, always in the same order
 * @param error how far the formula behind them was found off
 */
public record Ringing(Map<Support, Mode> first, FormulaError error) {

    public Ringing {
        first = Collections.unmodifiableMap(new EnumMap<>(first));
    }

    /** The first modes of a bay, or why the theory does not hold for it. */
    public static Estimate<Ringing> of(Skin skin, Bay bay) {
        return betweenRibs(skin, bay, 0);
    }

    /** The same for the clear bay beside or between ribs that clamp that many (0 to 2) of the ends of its length. */
    public static Estimate<Ringing> betweenRibs(Skin skin, Bay bay, int ribbedEnds) {
        Estimate<Mode> hinged = ShellModes.lowest(skin, bay, Support.HINGED_SLIDING, ribbedEnds);
        Estimate<Mode> clamped = ShellModes.lowest(skin, bay, Support.CLAMPED_SLIDING, ribbedEnds);
        if (!hinged.isWithin() || !clamped.isWithin()) {
            return Estimate.outside(hinged.isWithin() ? clamped.reason() : hinged.reason());
        }
        boolean held = ribbedEnds == 2;
        return Estimate.within(new Ringing(Map.of(
                Support.HINGED_SLIDING, hinged.value(),
                Support.CLAMPED_SLIDING, clamped.value(),
                Support.HINGED_FIXED, ShellModes.fixed(skin, bay, held, hinged.value()),
                Support.CLAMPED_FIXED, ShellModes.fixed(skin, bay, true, clamped.value())),
                bay.isFlat() ? ShellModes.FLAT_ERROR : ShellModes.CURVED_ERROR));
    }

    /** Lowest to highest first frequency as computed, Hz. */
    public Band frequency() {
        return range(Mode::frequency);
    }

    /** The same with the formula's error. */
    public Band told() {
        return error.around(frequency().lower(), frequency().upper());
    }

    /** Least and greatest share of the first mode's energy that is bending, 0 to 1. */
    public double leastBendingShare() {
        return range(Mode::bendingShare).lower();
    }

    public double greatestBendingShare() {
        return range(Mode::bendingShare).upper();
    }

    private Band range(ToDoubleFunction<Mode> value) {
        return new Band(
                first.values().stream().mapToDouble(value).min().orElseThrow(),
                first.values().stream().mapToDouble(value).max().orElseThrow());
    }
}
