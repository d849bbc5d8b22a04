package unthrum.cutting;

/**
 * Material to cut from: equal sheets, an odd offcut, or a roll. Lengths are whole tenths of a millimetre.
 *
 * @param name   what the fitter calls it; unique within a task
 * @param width  across; of a roll the fixed width
 * @param height along; of a roll the length on it
 * @param count  how many there are, {@link #UNLIMITED} when more can be bought
 * @param kind   sheet, offcut or roll
 */
public record Stock(String name, int width, int height, int count, Kind kind) {

    /** A count that stands for as many as are wanted. */
    public static final int UNLIMITED = Lengths.LONGEST;

    /** What the stock is; it decides what using it costs. */
    public enum Kind {
        /** Each one used counts. */
        SHEET,
        /** Left over from earlier work: using it counts for nothing. */
        OFFCUT,
        /** Only the length cut off counts. */
        ROLL
    }

    public Stock {
        Lengths.requirePositive("stock " + name, "width", width);
        Lengths.requirePositive("stock " + name, "height", height);
        Lengths.requirePositive("stock " + name, "count", count);
    }

    public static Stock sheets(String name, int width, int height, int count) {
        return new Stock(name, width, height, count, Kind.SHEET);
    }

    public static Stock unlimited(String name, int width, int height) {
        return sheets(name, width, height, UNLIMITED);
    }

    public static Stock offcut(String name, int width, int height) {
        return new Stock(name, width, height, 1, Kind.OFFCUT);
    }

    /** A roll of open length. */
    public static Stock roll(String name, int width) {
        return new Stock(name, width, Lengths.LONGEST, 1, Kind.ROLL);
    }

    public long area() {
        return (long) width * height;
    }
}
