package unthrum.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Fills sheets up from a pool in a given order: of the next few blanks the one goes first that fits best somewhere.
 */
final class Recreate {

    /** So many blanks compete. */
    private static final int CHOICE = 3;

    private final Sheets sheets;
    private final SplittableRandom random;
    /** The competing blanks and where each fits best. */
    private final Blank[] next = new Blank[CHOICE];
    private final Spot[] spots = new Spot[CHOICE];
    private int competing;
    private FitRule rule;
    private List<Blank> left;
    private long leftArea;

    Recreate(Sheets sheets, SplittableRandom random) {
        this.sheets = sheets;
        this.random = random;
        for (int i = 0; i < CHOICE; i++) {
            spots[i] = new Spot();
        }
    }

    /** What found no place; null as soon as that is more than so much area, and then the sheets are filled in part. */
    List<Blank> round(List<Blank> pool, FitRule fitRule, double mostLeft) {
        rule = fitRule;
        left = new ArrayList<>();
        leftArea = 0;
        competing = 0;
        int taken = 0;
        while (leftArea <= mostLeft && (competing > 0 || taken < pool.size())) {
            while (competing < CHOICE && taken < pool.size() && leftArea <= mostLeft) {
                Spot spot = spots[competing];
                spot.reset();
                enter(pool.get(taken++), spot);
            }
            if (competing > 0 && leftArea <= mostLeft) {
                place(best());
            }
        }
        return leftArea <= mostLeft ? left : null;
    }

    private int best() {
        int best = 0;
        for (int i = 1; i < competing; i++) {
            best = spots[i].score < spots[best].score ? i : best;
        }
        return best;
    }

    private void place(int chosen) {
        Spot spot = spots[chosen];
        int sheet = spot.sheet;
        sheets.change(sheet).place(next[chosen], spot);
        int others = competing - 1;
        next[chosen] = next[others];
        spots[chosen] = spots[others];
        spots[others] = spot;
        competing = 0;
        for (int i = 0; i < others; i++) {
            Spot kept = spots[i];
            spots[i] = spots[competing];
            spots[competing] = kept;
            update(kept, next[i], sheet);
            enter(next[i], kept);
        }
    }

    /** The best spot of a blank once another was placed on that sheet; no spot at all if it must look again. */
    private void update(Spot spot, Blank blank, int sheet) {
        if (spot.sheet == sheet && !sheets.get(sheet).stillOffers(spot)) {
            spot.reset();
        } else {
            long before = spot.score;
            sheets.get(sheet).offerNew(blank, rule, random, spot);
            spot.sheet = spot.score < before ? sheet : spot.sheet;
        }
    }

    /** Lets the blank compete, with the spot it has or else the best of all sheets, or leaves it over. */
    private void enter(Blank blank, Spot spot) {
        if (!spot.found()) {
            offerAll(blank, spot);
        }
        if (spot.found()) {
            next[competing++] = blank;
        } else {
            left.add(blank);
            leftArea += blank.area();
        }
    }

    private void offerAll(Blank blank, Spot spot) {
        for (int i = 0; i < sheets.count(); i++) {
            long before = spot.score;
            sheets.get(i).offer(blank, rule, random, spot);
            spot.sheet = spot.score < before ? i : spot.sheet;
        }
    }
}
