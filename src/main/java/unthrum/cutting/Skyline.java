package unthrum.cutting;

import java.util.List;

/**
 * Fills a roll from below: always at the lowest (then leftmost) step of the outline, with the blank that fits it best,
 * the earlier in the order among equals. The order of fit follows Leung, Zhang and Sim, 'A two-stage intelligent
 * search algorithm for the two-dimensional strip packing problem', EJOR 215 (2011).
 */
final class Skyline {

    private static final int PERFECT = 7;

    private final int rollWidth;
    private final List<Blank> blanks;
    private final int[] stepLeft;
    private final int[] stepHeight;
    private int steps;
    private final int[] waiting;
    private int waits;
    private int foundAt;
    private boolean foundTurned;
    private final Placed[] placed;
    private int done;

    Skyline(int rollWidth, List<Blank> blanks) {
        this.rollWidth = rollWidth;
        this.blanks = blanks;
        this.stepLeft = new int[2 * blanks.size() + 3];
        this.stepHeight = new int[2 * blanks.size() + 3];
        this.waiting = new int[blanks.size()];
        this.placed = new Placed[blanks.size()];
    }

    /**
     * Fills in this order: of each blank twice its index, plus one if it is rather turned. Gives the length used,
     * weighted by the roll's width, and the area under the outline.
     */
    long fill(int[] order) {
        System.arraycopy(order, 0, waiting, 0, order.length);
        waits = order.length;
        done = 0;
        steps = 1;
        stepLeft[0] = 0;
        stepHeight[0] = 0;
        while (waits > 0) {
            int lowest = lowest();
            if (find(lowest)) {
                place(lowest);
            } else {
                raise(lowest);
            }
        }
        long under = 0;
        for (int i = 0; i < steps; i++) {
            under += (long) (right(i) - stepLeft[i]) * stepHeight[i];
        }
        return (long) length() * rollWidth + under;
    }

    /** The length used. */
    int length() {
        int highest = 0;
        for (int i = 0; i < steps; i++) {
            highest = Math.max(highest, stepHeight[i]);
        }
        return highest;
    }

    List<Placed> placed() {
        return List.of(placed);
    }

    private int right(int step) {
        return step + 1 < steps ? stepLeft[step + 1] : rollWidth;
    }

    private int lowest() {
        int lowest = 0;
        for (int i = 1; i < steps; i++) {
            lowest = stepHeight[i] < stepHeight[lowest] ? i : lowest;
        }
        return lowest;
    }

    private int wall(int step, int neighbour) {
        return neighbour < 0 || neighbour >= steps ? Integer.MAX_VALUE : stepHeight[neighbour] - stepHeight[step];
    }

    /** Finds the blank that fits the step best. */
    private boolean find(int step) {
        int room = right(step) - stepLeft[step];
        int lower = Math.min(wall(step, step - 1), wall(step, step + 1));
        int higher = Math.max(wall(step, step - 1), wall(step, step + 1));
        int best = -1;
        for (int i = 0; i < waits && best < PERFECT; i++) {
            Blank blank = blanks.get(waiting[i] / 2);
            for (int way = 0; way < (blank.mayTurn() ? 2 : 1); way++) {
                boolean turned = blank.mayTurn() && way != waiting[i] % 2;
                int width = turned ? blank.height() : blank.width();
                int height = turned ? blank.width() : blank.height();
                int fit = width > room ? -1 : fit(width == room, height, lower, higher);
                if (fit > best) {
                    best = fit;
                    foundAt = i;
                    foundTurned = turned;
                }
            }
        }
        return best >= 0;
    }

    private static int fit(boolean fills, int height, int lower, int higher) {
        if (fills) {
            return height == higher ? PERFECT : height == lower ? 6 : height < higher ? 4 : 5;
        }
        return height == higher ? 3 : height == lower ? 2 : 0;
    }

    /** Puts the blank found against the higher wall, or against the lower one when it is level with that. */
    private void place(int step) {
        Blank blank = blanks.get(waiting[foundAt] / 2);
        System.arraycopy(waiting, foundAt + 1, waiting, foundAt, waits - foundAt - 1);
        waits--;
        int width = foundTurned ? blank.height() : blank.width();
        int height = foundTurned ? blank.width() : blank.height();
        int toLeft = wall(step, step - 1);
        int toRight = wall(step, step + 1);
        boolean atLeft = height == toLeft || height != toRight && toLeft >= toRight;
        int x = atLeft ? stepLeft[step] : right(step) - width;
        int y = stepHeight[step];
        placed[done++] = new Placed(blank, x, y, width, height);
        boolean gapLeft = x > stepLeft[step];
        boolean gapRight = x + width < right(step);
        if (gapRight) {
            insert(step + 1, x + width, y);
        }
        if (gapLeft) {
            insert(step + 1, x, y + height);
        } else {
            stepHeight[step] = y + height;
        }
        mergeAround(step);
    }

    /** Gives up the step: lifts it to the lower of its walls. */
    private void raise(int step) {
        stepHeight[step] += Math.min(wall(step, step - 1), wall(step, step + 1));
        mergeAround(step);
    }

    private void insert(int at, int left, int height) {
        System.arraycopy(stepLeft, at, stepLeft, at + 1, steps - at);
        System.arraycopy(stepHeight, at, stepHeight, at + 1, steps - at);
        stepLeft[at] = left;
        stepHeight[at] = height;
        steps++;
    }

    private void mergeAround(int step) {
        for (int i = Math.min(steps - 1, step + 2); i >= Math.max(1, step - 1); i--) {
            if (stepHeight[i] == stepHeight[i - 1]) {
                System.arraycopy(stepLeft, i + 1, stepLeft, i, steps - i - 1);
                System.arraycopy(stepHeight, i + 1, stepHeight, i, steps - i - 1);
                steps--;
            }
        }
    }
}
