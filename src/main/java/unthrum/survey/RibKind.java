package unthrum.survey;

/** What stiffens a panel along a line. */
public enum RibKind {
    BOX_SECTION("box section"),
    TOP_HAT("top hat"),
    BEAD("bead"),
    SECOND_SKIN("second skin"),
    RIVETED_STRIP("riveted strip"),
    FOLD("fold");

    private final String word;

    RibKind(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
