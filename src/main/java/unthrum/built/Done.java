package unthrum.built;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import unthrum.facts.Duty.Work;
import unthrum.reading.Count;
import unthrum.reading.Says;

/** Work done at one time, and what proves it. */
public record Done(
        @Count(min = 1) List<Work> work,
        @Says("'no' when it is known that it was not done") Optional<Boolean> done,
        @Says("The parts of the panel it was done at, such as 'seat bolt 1'; all of them when absent")
        Optional<List<String>> at,
        @Says("The name of the photograph that shows it") Optional<String> photo,
        @Says("What was measured, with its unit") Optional<String> measured,
        Optional<String> who,
        Optional<LocalDate> when) {

    /** Whether somebody states that it was done. */
    public boolean isStated() {
        return done.orElse(true);
    }

    /** Whether something outside a word shows it. */
    public boolean isShown() {
        return photo.isPresent() || measured.isPresent();
    }
}
