package unthrum.cutting;

import java.util.List;
import java.util.SplittableRandom;

/** A sheet being filled: what lies on it and where more would go. Sizes include the knife margin. */
abstract class SheetSpace {

    /** One place in so many is overlooked at random, so that the search does not always decide alike. */
    private static final int OVERLOOK_ONE_IN = 40;

    final int width;
    final int height;
    private long freeArea;

    SheetSpace(int width, int height) {
        this.width = width;
        this.height = height;
        this.freeArea = (long) width * height;
    }

    /** An empty sheet of this stock. */
    static SheetSpace blank(Stock stock, CutRule cuts, int margin) {
        if (cuts == CutRule.FREE) {
            return FreeSpace.blank(stock, margin);
        }
        return stock.defects().isEmpty() ? new GuillotineSpace(stock.width() + margin, stock.height() + margin)
            : PartedSpace.blank(stock, margin);
    }

    /** Whether a blank lying as given has a place as the first on an empty sheet. */
    abstract boolean takes(int blankWidth, int blankHeight);

    final boolean takes(Blank blank) {
        return takes(blank.width(), blank.height()) || blank.mayTurn() && takes(blank.height(), blank.width());
    }

    /** Lets {@code spot} be the best place here for the blank lying as given, when better than what it holds. */
    abstract void offer(int blankWidth, int blankHeight, FitRule rule, SplittableRandom random, Spot spot);

    /**
     * The same of the places that are new since the last blank was joined; of all, where each blank changes the room of
     * all others.
     */
    void offerNew(int blankWidth, int blankHeight, FitRule rule, SplittableRandom random, Spot spot) {
        offer(blankWidth, blankHeight, rule, random, spot);
    }

    /** Whether a place offered before the last blank was joined is known to be still one. */
    boolean stillOffers(Spot spot) {
        return false;
    }

    /** The most that any gap would cover of a blank lying as given, if what is beyond it could be cut off. */
    abstract long covers(int blankWidth, int blankHeight);

    /** The middle of some gap, rather of one that would cover much of the blank; of a blank, where no gaps are kept. */
    Middle someGap(Blank wanted, SplittableRandom random) {
        return anyBlank(random);
    }

    /** The middle of some gap, rather of a large one; of a blank, where no gaps are kept. */
    final Middle someGap(SplittableRandom random) {
        return someGap(new Blank(0, width, height, false), random);
    }

    abstract List<Placed> placed();

    abstract int size();

    abstract SheetSpace copy();

    /** The same blanks at the same places on a sheet of another size, in which they all lie. */
    abstract SheetSpace sized(int newWidth, int newHeight);

    abstract void join(Blank blank, Spot spot);

    abstract void drop(boolean[] removed);

    final void offer(Blank blank, FitRule rule, SplittableRandom random, Spot spot) {
        if (blank.area() > freeArea) {
            return;
        }
        offer(blank.width(), blank.height(), rule, random, spot);
        if (blank.mayTurn()) {
            offer(blank.height(), blank.width(), rule, random, spot);
        }
    }

    final void offerNew(Blank blank, FitRule rule, SplittableRandom random, Spot spot) {
        if (blank.area() > freeArea) {
            return;
        }
        offerNew(blank.width(), blank.height(), rule, random, spot);
        if (blank.mayTurn()) {
            offerNew(blank.height(), blank.width(), rule, random, spot);
        }
    }

    final long covers(Blank blank) {
        long asItIs = covers(blank.width(), blank.height());
        return blank.mayTurn() ? Math.max(asItIs, covers(blank.height(), blank.width())) : asItIs;
    }

    final Middle anyBlank(SplittableRandom random) {
        Placed any = placed().get(random.nextInt(size()));
        return Middle.of(any.x(), any.y(), any.width(), any.height());
    }

    final void place(Blank blank, Spot spot) {
        freeArea -= blank.area();
        join(blank, spot);
    }

    /** Takes away those that are marked, by their index in {@link #placed()}. */
    final void remove(boolean[] removed) {
        List<Placed> all = placed();
        for (int i = 0; i < removed.length; i++) {
            freeArea += removed[i] ? all.get(i).blank().area() : 0;
        }
        drop(removed);
    }

    /** A copy of another size; what lies beyond the new edges is taken out and added to {@code out}. */
    final SheetSpace resized(int newWidth, int newHeight, List<Blank> out) {
        if (newWidth == width && newHeight == height) {
            return copy();
        }
        SheetSpace copy = copy();
        List<Placed> all = copy.placed();
        boolean[] beyond = new boolean[all.size()];
        for (int i = 0; i < beyond.length; i++) {
            beyond[i] = all.get(i).right() > newWidth || all.get(i).top() > newHeight;
            if (beyond[i]) {
                out.add(all.get(i).blank());
            }
        }
        copy.remove(beyond);
        return copy.sized(newWidth, newHeight)
            .withFreeArea(copy.freeArea + (long) newWidth * newHeight - (long) width * height);
    }

    final long freeArea() {
        return freeArea;
    }

    final SheetSpace withFreeArea(long area) {
        freeArea = area;
        return this;
    }

    static boolean overlook(SplittableRandom random) {
        return random.nextInt(OVERLOOK_ONE_IN) == 0;
    }
}
