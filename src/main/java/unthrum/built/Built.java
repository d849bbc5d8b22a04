package unthrum.built;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import unthrum.reading.Quantity;
import unthrum.reading.Says;

/** The job as it was done, beside its survey. What is absent is unknown, never done. */
@Says("What was fitted to a surveyed vehicle, with what proves it")
public record Built(
        @Says("The survey's file, as seen from this one") String of,
        @Says("The last day of the work; unknown while it goes on") Optional<LocalDate> finished,
        @Says("Who did the work, where an entry names nobody else") Optional<String> who,
        @Says("Whether somebody says that all is done; a bare word proves nothing") Optional<Boolean> allDone,
        @Says("Every panel that was worked on") List<BuiltPanel> panels,
        @Says("Work done for the vehicle as a whole") Optional<List<Done>> done,
        @Says("What was measured before and after, in the same way") Optional<List<Measured>> measured,
        @Says("A senior's signature under the content as it was on that day") Optional<SignOff> signOff,
        Optional<String> note) {

    /** Whether anything was measured both before and after. */
    public boolean isComparedByMeasuring() {
        return measured.orElse(List.of()).stream().anyMatch(m -> m.before().isPresent() && m.after().isPresent());
    }

    /** One thing measured before and after. */
    public record Measured(
            @Says("What was measured, where and how") String what,
            Optional<Quantity> before,
            Optional<Quantity> after) {
    }

    /** A signature under an exact content. */
    public record SignOff(
            String who,
            LocalDate when,
            @Says("The digest that the audit printed on that day") String digest) {
    }

    /** What is said of a panel, if anything is. */
    public Optional<BuiltPanel> panel(String name) {
        return panels.stream().filter(p -> p.panel().equals(name)).findFirst();
    }

    /** The same job before anybody signed it. */
    public Built unsigned() {
        return new Built(of, finished, who, allDone, panels, done, measured, Optional.empty(), note);
    }
}
