package unthrum.cutting;

/** The best place found so far for a blank; filled anew for every blank, as the search asks millions of times. */
final class Spot {

    long score = Long.MAX_VALUE;
    SheetSpace space;
    int sheet;
    /** Where in a free space. */
    int x;
    int y;
    /** Beside which node of a guillotine space, and how. */
    int node;
    boolean sideways;
    /** Which part of a parted sheet. */
    int part;
    int width;
    int height;

    void reset() {
        score = Long.MAX_VALUE;
        space = null;
    }

    boolean found() {
        return space != null;
    }

    void take(long newScore, SheetSpace newSpace, int newX, int newY, int newWidth, int newHeight) {
        take(newScore, newSpace, newWidth, newHeight);
        x = newX;
        y = newY;
    }

    void take(long newScore, SheetSpace newSpace, int newNode, boolean newSideways, int newWidth, int newHeight) {
        take(newScore, newSpace, newWidth, newHeight);
        node = newNode;
        sideways = newSideways;
    }

    private void take(long newScore, SheetSpace newSpace, int newWidth, int newHeight) {
        score = newScore;
        space = newSpace;
        width = newWidth;
        height = newHeight;
    }
}
