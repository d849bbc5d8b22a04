package unthrum.drill;

import java.time.LocalDate;
import java.util.List;

/**
 * When a subject comes up again: five boxes after Sebastian Leitner, So lernt man lernen, Herder 1972. Every subject
 * begins in the first box. A right answer on a day when it is due moves it one box on, any other answer back to the
 * first, and each box waits longer than the one before. The waiting days double from box to box (common practice, no
 * source; Leitner's own boxes grow in size, not by the calendar).
 */
public final class Boxes {

    /** How many days a subject waits in each box, the first box first. */
    public static final List<Integer> DAYS = List.of(1, 2, 4, 8, 16);

    static final int FIRST = 1;
    static final int LAST = 5;

    private Boxes() {
    }

    /** The subject after an answer. Right answers before its day leave it where it is: cramming moves no box. */
    static Practised after(Practised before, Result result, LocalDate today) {
        int right = before.right() + (result == Result.RIGHT ? 1 : 0);
        int wrongReason = before.wrongReason() + (result == Result.WRONG_REASON ? 1 : 0);
        int box = before.box();
        LocalDate due = before.due();
        if (result != Result.RIGHT) {
            box = FIRST;
            due = today.plusDays(DAYS.get(0));
        } else if (!due.isAfter(today)) {
            box = Math.min(box + 1, LAST);
            due = today.plusDays(DAYS.get(box - 1));
        }
        return new Practised(before.subject(), before.asked() + 1, right, wrongReason, box, due);
    }
}
