package unthrum.cutting;

import java.util.List;

/**
 * The answer to a cutting task.
 *
 * @param task     the task
 * @param sheets   the stock used, with the pieces cut from it
 * @param unplaced pieces left over because they are too large or the stock ends, one entry a kind of piece
 * @param bound    proved lower bound: whole sheets of any layout that places everything; of a roll its length
 */
public record CuttingLayout(CuttingTask task, List<SheetLayout> sheets, List<Piece> unplaced, int bound) {

    public CuttingLayout {
        sheets = List.copyOf(sheets);
        unplaced = List.copyOf(unplaced);
    }

    /** Whole sheets used; offcuts count for nothing. */
    public int wholeSheets() {
        return (int) sheets.stream().filter(s -> s.stock().kind() == Stock.Kind.SHEET).count();
    }

    /** Length cut off the roll, in tenths of a millimetre; 0 without a roll. */
    public int rollLength() {
        return task.fromRoll() ? sheets.stream().mapToInt(SheetLayout::usedHeight).max().orElse(0) : 0;
    }

    /** What is kept least: roll length from a roll, else whole sheets. */
    public int cost() {
        return task.fromRoll() ? rollLength() : wholeSheets();
    }

    /** Whether everything is placed and no layout of any kind can cost less. */
    public boolean provedLeast() {
        return unplaced.isEmpty() && cost() == bound;
    }

    /** Area of the whole sheets used, in hundredths of a square millimetre. */
    public long sheetArea() {
        return sheets.stream().map(SheetLayout::stock).filter(s -> s.kind() == Stock.Kind.SHEET)
            .mapToLong(Stock::area).sum();
    }

    /** Area of the largest offcut left on any one sheet used, in hundredths of a square millimetre. */
    public long largestOffcut() {
        return sheets.stream().mapToLong(s -> s.offcutArea(task.knifeMargin())).max().orElse(0);
    }

    /** Area of the pieces left over, in hundredths of a square millimetre. */
    public long unplacedArea() {
        return unplaced.stream().mapToLong(p -> (long) p.width() * p.height() * p.count()).sum();
    }
}
