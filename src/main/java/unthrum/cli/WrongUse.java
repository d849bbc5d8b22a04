package unthrum.cli;

import java.util.Collection;
import unthrum.reading.Nearest;

/** The user asked for something that cannot be; the message says what, and what to do instead. */
final class WrongUse extends RuntimeException {
    private static final long serialVersionUID = 1L;

    WrongUse(String message) {
        super(message, null, false, false);
    }

    /** Something is called by a name that nothing has: the nearest name is asked for and all are listed. */
    static WrongUse unknown(String what, String written, Collection<String> known) {
        String meant = Nearest.remedy(written, known);
        return new WrongUse("no " + what + "; " + (meant.isEmpty() ? "" : meant + " ") + "there are: "
                + String.join(", ", known));
    }
}
