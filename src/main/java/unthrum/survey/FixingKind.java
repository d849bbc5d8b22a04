package unthrum.survey;

/** What is clipped, bolted or bears on a panel. */
public enum FixingKind {
    LINING_CLIP("lining clip"),
    HARD_STOP("hard stop"),
    DATUM_FACE("datum face"),
    SEAT_BOLT("seat bolt"),
    BELT_ANCHOR("belt anchor"),
    CHILD_SEAT_ANCHOR("child-seat anchor"),
    HINGE("hinge"),
    LATCH("latch"),
    BRACKET("bracket"),
    THREADED_INSERT("threaded insert"),
    CONSOLE_STUD("console stud"),
    EARTH_POINT("earth point");

    private final String word;

    FixingKind(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
