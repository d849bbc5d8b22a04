package unthrum.reading;

/** What reading one value gave: the value, or null with what is wrong. */
record Outcome(Object value, String found, String expected, String remedy) {
    static Outcome of(Object value) {
        return new Outcome(value, "", "", "");
    }

    static Outcome wrong(String found, String expected, String remedy) {
        return new Outcome(null, found, expected, remedy);
    }
}
