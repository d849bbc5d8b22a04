package unthrum.cli;

/** The user asked for something that cannot be; the message says what, and what to do instead. */
final class WrongUse extends RuntimeException {
    private static final long serialVersionUID = 1L;

    WrongUse(String message) {
        super(message, null, false, false);
    }
}
