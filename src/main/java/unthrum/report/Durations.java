package unthrum.report;

/** Lengths of time as people say them. */
final class Durations {

    private static final long MINUTE = 60;
    private static final long HOUR = 60 * MINUTE;
    private static final long DAY = 24 * HOUR;
    /** Nobody estimates work more finely. */
    private static final long STEP = 5 * MINUTE;
    /** From here on the minutes of an estimate mean nothing. */
    private static final long WHOLE_HOURS_FROM = 10 * HOUR;

    private Durations() {
    }

    /** An estimate: to five minutes, from ten hours on to the hour, from two days on to the day. */
    static String rough(double seconds) {
        long step = seconds >= 2 * DAY ? DAY : seconds >= WHOLE_HOURS_FROM ? HOUR : STEP;
        return exact(Math.max(step, Math.round(seconds / step) * step));
    }

    /** An amount of work: nobody works round the clock, so it is never told in days. */
    static String hours(double seconds) {
        return seconds >= WHOLE_HOURS_FROM ? Math.round(seconds / HOUR) + " h" : rough(seconds);
    }

    /** '20 min', '1 h 30 min', '2 d'; two days and more in days where they are whole, else in hours. */
    static String exact(double seconds) {
        long s = Math.round(seconds);
        if (s >= 2 * DAY && s % DAY == 0) {
            return s / DAY + " d";
        }
        String minutes = s % HOUR / MINUTE + " min";
        return s < HOUR ? minutes : s / HOUR + " h" + (s % HOUR == 0 ? "" : " " + minutes);
    }

    /** '5 to 15 min'; the unit once where it is the same. */
    static String between(double least, double most) {
        String low = exact(least);
        String high = exact(most);
        String unit = high.substring(high.lastIndexOf(' '));
        boolean plain = low.indexOf(' ') == low.lastIndexOf(' ') && low.endsWith(unit);
        return (plain ? low.substring(0, low.length() - unit.length()) : low) + " to " + high;
    }
}
