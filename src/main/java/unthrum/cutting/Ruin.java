package unthrum.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Empties parts of a few sheets, mostly around a gap: a large one, or one that a blank left over would nearly fit into.
 * Only where something is wasted can more be gained.
 */
final class Ruin {

    /** A round takes something from at most so many sheets, so many blanks from each, or all in one case of so many. */
    private static final int MOST_SHEETS = 3;
    private static final int MOST_BLANKS = 12;
    private static final int EMPTY_ONE_IN = 10;
    /** In one case of so many around any blank, whatever is wasted there. */
    private static final int ANYWHERE_ONE_IN = 4;

    private final Sheets sheets;
    private final SplittableRandom random;

    Ruin(Sheets sheets, SplittableRandom random) {
        this.sheets = sheets;
        this.random = random;
    }

    /** The blanks taken out, to make room for some of those that are left over. */
    List<Blank> round(List<Blank> leftOver) {
        List<Blank> out = new ArrayList<>();
        int count = 1 + random.nextInt(Math.min(MOST_SHEETS, sheets.count()));
        for (int i = 0; i < count; i++) {
            int sheet = random.nextInt(sheets.count());
            if (sheets.get(sheet).size() > 0) {
                takeOut(sheets.change(sheet), leftOver, out);
            }
        }
        return out;
    }

    /** Takes all blanks out of a sheet, or those nearest to one place. */
    private void takeOut(SheetSpace sheet, List<Blank> leftOver, List<Blank> out) {
        int size = sheet.size();
        boolean[] removed = new boolean[size];
        List<Placed> placed = sheet.placed();
        int take = random.nextInt(EMPTY_ONE_IN) == 0 ? size : 1 + random.nextInt(Math.min(size, MOST_BLANKS));
        if (take == size) {
            Arrays.fill(removed, true);
        } else {
            markNearest(placed, middle(sheet, leftOver), take, removed);
        }
        for (int i = 0; i < size; i++) {
            if (removed[i]) {
                out.add(placed.get(i).blank());
            }
        }
        sheet.remove(removed);
    }

    private Middle middle(SheetSpace sheet, List<Blank> leftOver) {
        if (random.nextInt(ANYWHERE_ONE_IN) == 0) {
            return sheet.anyBlank(random);
        }
        return random.nextBoolean() ? sheet.someGap(random)
            : sheet.someGap(leftOver.get(random.nextInt(leftOver.size())), random);
    }

    private static void markNearest(List<Placed> placed, Middle middle, int take, boolean[] removed) {
        long[] keys = new long[removed.length];
        for (int i = 0; i < keys.length; i++) {
            keys[i] = middle.distanceTo(placed.get(i)) * keys.length + i;
        }
        Arrays.sort(keys);
        for (int i = 0; i < take; i++) {
            removed[(int) (keys[i] % keys.length)] = true;
        }
    }
}
