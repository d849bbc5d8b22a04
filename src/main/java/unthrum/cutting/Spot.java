package unthrum.cutting;

/** The best place found so far for a blank; filled anew for every blank, as the search asks millions of times. */
final class Spot {

    long score = Long.MAX_VALUE;
    SheetSpace space;
    int sheet;
    /** Where in the space: its free rectangle or its node. */
    int slot;
    /** Which part of a parted sheet. */
    int part;
    /** How it is joined there; only guillotine spaces use it. */
    boolean sideways;
    int width;
    int height;

    void reset() {
        score = Long.MAX_VALUE;
        space = null;
    }

    boolean found() {
        return space != null;
    }

    void take(long newScore, SheetSpace newSpace, int newSlot, boolean newSideways, int newWidth, int newHeight) {
        score = newScore;
        space = newSpace;
        slot = newSlot;
        sideways = newSideways;
        width = newWidth;
        height = newHeight;
    }
}
