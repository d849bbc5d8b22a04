package unthrum.cutting;

import java.util.List;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/**
 * Material to cut from: equal sheets, an odd offcut, or a roll. Lengths are whole tenths of a millimetre.
 *
 * @param name    what the fitter calls it; unique within a task
 * @param width   across; of a roll the fixed width
 * @param height  along; of a roll the length on it
 * @param count   how many there are, {@link #UNLIMITED} when more can be bought
 * @param kind    sheet, offcut or roll
 * @param defects where nothing can be cut from it; a roll has none
 */
public record Stock(String name, int width, int height, int count, Kind kind, List<Defect> defects) {

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
        defects = List.copyOf(defects);
        for (Defect d : defects) {
            if (kind == Kind.ROLL || d.x() < 0 || d.y() < 0 || d.right() > width || d.top() > height) {
                throw new IllegalArgumentException("stock " + name + ": defect " + d + " is not on a sheet of "
                    + width + " by " + height);
            }
        }
    }

    /** The same stock with defects. */
    public Stock with(List<Defect> newDefects) {
        return new Stock(name, width, height, count, kind, newDefects);
    }

    /** Whether a rectangle of this size can be cut from it; if so, then also from a corner of what is clean. */
    boolean yields(int pieceWidth, int pieceHeight) {
        return corners(Defect::right).anyMatch(x -> corners(Defect::top).anyMatch(y -> x + pieceWidth <= width
            && y + pieceHeight <= height
            && defects.stream().noneMatch(d -> d.touches(x, y, x + pieceWidth, y + pieceHeight))));
    }

    private IntStream corners(ToIntFunction<Defect> end) {
        return IntStream.concat(IntStream.of(0), defects.stream().mapToInt(end));
    }

    public static Stock sheets(String name, int width, int height, int count) {
        return new Stock(name, width, height, count, Kind.SHEET, List.of());
    }

    public static Stock unlimited(String name, int width, int height) {
        return sheets(name, width, height, UNLIMITED);
    }

    public static Stock offcut(String name, int width, int height) {
        return new Stock(name, width, height, 1, Kind.OFFCUT, List.of());
    }

    /** A roll of open length. */
    public static Stock roll(String name, int width) {
        return new Stock(name, width, Lengths.LONGEST, 1, Kind.ROLL, List.of());
    }

    public long area() {
        return (long) width * height;
    }
}
