package unthrum.job;

import java.util.List;

/** Kinds of step that may not run side by side, though neither waits for the other. */
public record Apart(String apart, List<String> these, List<String> those, String because, String source) {

    boolean keeps(StepKind one, StepKind other) {
        return these.contains(one.step()) && those.contains(other.step())
                || these.contains(other.step()) && those.contains(one.step());
    }
}
