package unthrum.reasoning.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import unthrum.knowledge.Measuring;
import unthrum.reading.Quantity;
import unthrum.reading.RecordPath;
import unthrum.survey.PanelEntry;

/**
 * One fact of a panel that can be turned to see what hangs on it.
 *
 * @param name    what to call it in an edit: the survey's key, with a number where there are several ('tap 2')
 * @param key     the survey's key
 * @param number  which of several it is, from 1; 0 where there is one only
 * @param today   what is stated, or else assumed; absent for a list that nobody wrote
 * @param stated  whether it is stated
 * @param words   the other values it can take, where it is no number on a scale
 * @param how     how it is measured and changed
 */
public record Lever(String name, String key, int number, RecordPath path, Optional<Object> today, boolean stated,
                    List<Object> words, Measuring how, BiFunction<PanelEntry, Object, PanelEntry> setter) {

    /** Values nearer than this, in steps, are the same. */
    private static final double SAME = 1e-6;

    /** A copy of the panel with the fact set to a value. */
    public PanelEntry set(PanelEntry panel, Object value) {
        return setter.apply(panel, value);
    }

    public boolean isScale() {
        return how.isScale();
    }

    /** Whether it is a list of parts. */
    public boolean isList() {
        return Levers.LISTS.contains(key);
    }

    /** The values above or below today's at which a fitter could read it, the nearest first. */
    public List<Object> scale(boolean upward) {
        Quantity step = how.step().orElseThrow();
        double now = ((Quantity) today.orElseThrow()).si() / step.si();
        double end = (upward ? how.most() : how.least()).orElseThrow().si() / step.si();
        long from = upward ? (long) Math.floor(now + SAME) + 1 : (long) Math.ceil(now - SAME) - 1;
        long to = Math.round(end);
        List<Object> values = new ArrayList<>();
        for (long i = from; upward ? i <= to : i >= to; i += upward ? 1 : -1) {
            values.add(new Quantity(at(i, step), step.dimension()));
        }
        return values;
    }

    /** The value so many steps from zero, as its decimal digits would be read. */
    private static double at(long steps, Quantity step) {
        double unit = step.dimension().shownIn().fromSi(step.si());
        double written = Math.round(steps * unit * 1e6) / 1e6;
        return step.dimension().shownIn().toSi(written);
    }
}
