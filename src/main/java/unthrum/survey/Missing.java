package unthrum.survey;

/** A factory part that is no longer there. */
public enum Missing {
    HEAT_SHIELD("heat shield"),
    HEAT_SHIELD_LOOSE("heat shield loose"),
    UNDERBODY_TRAY("underbody tray"),
    DOOR_MEMBRANE("door membrane"),
    SEAL("seal");

    private final String word;

    Missing(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
