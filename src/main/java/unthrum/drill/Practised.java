package unthrum.drill;

import java.time.LocalDate;
import unthrum.reading.Between;
import unthrum.reading.Says;

/** How an apprentice stands in one subject. */
@Says("How an apprentice stands in one subject of the rules")
public record Practised(
        String subject,
        @Says("How often it was answered") @Between(from = 0, to = Integer.MAX_VALUE) int asked,
        @Says("How often it was right, reason and all") @Between(from = 0, to = Integer.MAX_VALUE) int right,
        @Says("How often it was right for the wrong reason") @Between(from = 0, to = Integer.MAX_VALUE) int wrongReason,
        @Says("The box that it lies in") @Between(from = Boxes.FIRST, to = Boxes.LAST) int box,
        @Says("The day from which it comes up again") LocalDate due) {

    static Practised unasked(String subject, LocalDate today) {
        return new Practised(subject, 0, 0, 0, Boxes.FIRST, today);
    }

    /** How often it was wrong. */
    public int wrong() {
        return asked - right - wrongReason;
    }
}
