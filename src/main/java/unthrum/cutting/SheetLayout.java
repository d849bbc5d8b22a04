package unthrum.cutting;

import java.util.List;

/** One sheet, offcut or roll with the pieces cut from it. */
public record SheetLayout(Stock stock, List<Placement> placements) {

    public SheetLayout {
        placements = List.copyOf(placements);
    }

    /** How far up the stock is used: of a roll the length to cut off. */
    public int usedHeight() {
        return placements.stream().mapToInt(Placement::top).max().orElse(0);
    }

    /** How far to the right the stock is used. */
    public int usedWidth() {
        return placements.stream().mapToInt(Placement::right).max().orElse(0);
    }

    /** Area of the pieces, in hundredths of a square millimetre. */
    public long pieceArea() {
        return placements.stream().mapToLong(p -> (long) p.width() * p.height()).sum();
    }

    /**
     * Area of the largest offcut that one straight cut across the stock leaves whole, after the knife margin:
     * the band above all pieces and defects, or the band to the right of them. Of a roll none: it stays on the roll.
     */
    public long offcutArea(int knifeMargin) {
        if (stock.kind() == Stock.Kind.ROLL) {
            return 0;
        }
        if (placements.isEmpty() && stock.defects().isEmpty()) {
            return stock.area();
        }
        int height = Math.max(usedHeight(), stock.defects().stream().mapToInt(Defect::top).max().orElse(0));
        int width = Math.max(usedWidth(), stock.defects().stream().mapToInt(Defect::right).max().orElse(0));
        long above = (long) Math.max(0, stock.height() - height - knifeMargin) * stock.width();
        long beside = (long) Math.max(0, stock.width() - width - knifeMargin) * stock.height();
        return Math.max(above, beside);
    }
}
