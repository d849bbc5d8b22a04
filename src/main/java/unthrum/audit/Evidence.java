package unthrum.audit;

import java.time.LocalDate;
import java.util.Optional;

/** What the as-built file says that bears on a finding, with who says it and of which day. */
public record Evidence(String says, Optional<String> who, Optional<LocalDate> when) {

    static Evidence of(String says) {
        return new Evidence(says, Optional.empty(), Optional.empty());
    }

    @Override
    public String toString() {
        return says + who.map(w -> ", " + w).orElse("") + when.map(w -> ", " + w).orElse("");
    }
}
