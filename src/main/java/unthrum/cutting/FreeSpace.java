package unthrum.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A sheet for free cuts, kept as the list of its maximal free rectangles. A blank goes into the lower left corner of
 * one of them (maximal rectangles: Jylänki 2010).
 */
final class FreeSpace extends SheetSpace {

    /** Of so many gaps the one is taken that would cover most. */
    private static final int RIVAL_GAPS = 4;

    private final List<Placed> placed;
    private Gaps gaps;

    private FreeSpace(int width, int height, List<Placed> placed, Gaps gaps) {
        super(width, height);
        this.placed = new ArrayList<>(placed);
        this.gaps = gaps;
    }

    FreeSpace(int width, int height) {
        this(width, height, List.of(), Gaps.whole(width, height));
    }

    /**
     * An empty sheet of this stock. Blanks carry their knife margin at the right and above, which may reach into a
     * defect; so what they must keep clear of is narrower there, as far as it does not vanish.
     */
    static FreeSpace blank(Stock stock, int margin) {
        List<Defect> kept = stock.defects().stream().map(d -> {
            int across = Math.min(margin, d.width() - 1);
            int along = Math.min(margin, d.height() - 1);
            return new Defect(d.x() + across, d.y() + along, d.width() - across, d.height() - along);
        }).toList();
        int width = stock.width() + margin;
        int height = stock.height() + margin;
        return new FreeSpace(width, height, List.of(), Gaps.whole(width, height, kept));
    }

    /** A sheet on which these lie already. */
    static SheetSpace of(int width, int height, List<Placed> placed) {
        FreeSpace space = new FreeSpace(width, height, placed, Gaps.whole(width, height));
        placed.forEach(space.gaps::carve);
        return space.withFreeArea((long) width * height - placed.stream().mapToLong(p -> p.blank().area()).sum());
    }

    @Override
    SheetSpace copy() {
        return new FreeSpace(width, height, placed, new Gaps(gaps)).withFreeArea(freeArea());
    }

    @Override
    SheetSpace sized(int newWidth, int newHeight) {
        return of(newWidth, newHeight, placed);
    }

    @Override
    List<Placed> placed() {
        return placed;
    }

    @Override
    int size() {
        return placed.size();
    }

    @Override
    boolean takes(int blankWidth, int blankHeight) {
        for (int i = 0; i < gaps.count(); i++) {
            if (gaps.width(i) >= blankWidth && gaps.height(i) >= blankHeight) {
                return true;
            }
        }
        return false;
    }

    @Override
    void offer(int blankWidth, int blankHeight, FitRule rule, SplittableRandom random, Spot spot) {
        offerFrom(0, blankWidth, blankHeight, rule, random, spot);
    }

    @Override
    void offerNew(int blankWidth, int blankHeight, FitRule rule, SplittableRandom random, Spot spot) {
        offerFrom(gaps.firstNew(), blankWidth, blankHeight, rule, random, spot);
    }

    private void offerFrom(int first, int blankWidth, int blankHeight, FitRule rule, SplittableRandom random,
                           Spot spot) {
        for (int i = first; i < gaps.count(); i++) {
            int gapWidth = gaps.width(i);
            int gapHeight = gaps.height(i);
            if (gapWidth < blankWidth || gapHeight < blankHeight) {
                continue;
            }
            long score = rule.score(gapWidth, gapHeight, blankWidth, blankHeight);
            if (score < spot.score && !overlook(random)) {
                spot.take(score, this, gaps.left(i), gaps.low(i), blankWidth, blankHeight);
            }
        }
    }

    @Override
    boolean stillOffers(Spot spot) {
        Placed last = placed.get(placed.size() - 1);
        return spot.x >= last.right() || last.x() >= spot.x + spot.width
            || spot.y >= last.top() || last.y() >= spot.y + spot.height;
    }

    @Override
    long covers(int blankWidth, int blankHeight) {
        long most = 0;
        for (int i = 0; i < gaps.count(); i++) {
            most = Math.max(most, covers(i, blankWidth, blankHeight));
        }
        return most;
    }

    private long covers(int gap, int blankWidth, int blankHeight) {
        return (long) Math.min(blankWidth, gaps.width(gap)) * Math.min(blankHeight, gaps.height(gap));
    }

    private long covers(int gap, Blank blank) {
        long asItIs = covers(gap, blank.width(), blank.height());
        return blank.mayTurn() ? Math.max(asItIs, covers(gap, blank.height(), blank.width())) : asItIs;
    }

    @Override
    Middle someGap(Blank wanted, SplittableRandom random) {
        if (gaps.count() == 0) {
            return anyBlank(random);
        }
        int most = random.nextInt(gaps.count());
        for (int i = 1; i < RIVAL_GAPS; i++) {
            int rival = random.nextInt(gaps.count());
            most = covers(rival, wanted) > covers(most, wanted) ? rival : most;
        }
        return Middle.of(gaps.left(most), gaps.low(most), gaps.width(most), gaps.height(most));
    }

    @Override
    void join(Blank blank, Spot spot) {
        Placed at = new Placed(blank, spot.x, spot.y, spot.width, spot.height);
        placed.add(at);
        gaps.carve(at);
    }

    @Override
    void drop(boolean[] removed) {
        List<Placed> gone = new ArrayList<>();
        List<Placed> kept = new ArrayList<>();
        for (int i = 0; i < removed.length; i++) {
            (removed[i] ? gone : kept).add(placed.get(i));
        }
        placed.clear();
        placed.addAll(kept);
        gaps = gone.isEmpty() ? gaps : gaps.without(gone, kept, width, height);
    }
}
