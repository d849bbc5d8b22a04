package unthrum.survey;

/** What the vehicle is for after the job. */
public enum Use {
    DAILY("daily"),
    LOAD_CARRYING("load carrying"),
    LIVED_IN("lived in"),
    STRIP_DOWN("strip-down");

    private final String word;

    Use(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
