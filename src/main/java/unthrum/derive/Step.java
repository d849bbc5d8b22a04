package unthrum.derive;

import java.util.List;
import java.util.function.Supplier;

/**
 * One step of the derivation, kept by what it reads: a panel is derived again and again with a single fact turned, and
 * every step that does not read this fact gives the very facts that it gave before. What it made of the panel at first
 * and what it made last are kept. Not for several threads at once.
 */
final class Step<T> {

    private record Made<T>(String panel, List<?> read, T result) {

        boolean isOf(String other, List<?> now) {
            return panel.equals(other) && read.equals(now);
        }
    }

    private Made<T> first;
    private Made<T> last;

    /** @param read all that the step reads beside the panel's name */
    T of(String panel, List<?> read, Supplier<T> make) {
        if (last != null && last.isOf(panel, read)) {
            return last.result;
        }
        if (first != null && first.isOf(panel, read)) {
            return first.result;
        }
        last = new Made<>(panel, read, make.get());
        if (first == null || !first.panel.equals(panel)) {
            first = last;
        }
        return last.result;
    }
}
