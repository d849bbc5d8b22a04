package unthrum.cutting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Checks a layout against its task from the placements alone, sharing nothing with the search: every piece inside its
 * stock and off its defects, of its own size, turned only if it may, a knife margin from its neighbours, the right
 * number of each, no more stock than there is, and, where asked, cut by edge-to-edge cuts alone.
 */
public final class LayoutCheck {

    /** What can be wrong. */
    public enum Kind {
        UNKNOWN_PIECE, UNKNOWN_STOCK, OUTSIDE, WRONG_SIZE, TURNED, OVERLAP, TOO_CLOSE, WRONG_COUNT, STOCK_ENDS,
        ON_DEFECT, NOT_GUILLOTINE
    }

    /**
     * One fault.
     *
     * @param kind  what is wrong
     * @param sheet index of the sheet, or -1 when it concerns all
     * @param what  the piece or stock
     */
    public record Fault(Kind kind, int sheet, String what) {
    }

    private final CuttingTask task;
    private final List<Fault> faults = new ArrayList<>();

    private LayoutCheck(CuttingTask task) {
        this.task = task;
    }

    /** All faults of the layout; empty when it is sound. */
    public static List<Fault> faults(CuttingLayout layout) {
        LayoutCheck check = new LayoutCheck(layout.task());
        for (int i = 0; i < layout.sheets().size(); i++) {
            check.sheet(i, layout.sheets().get(i));
        }
        check.pieceCounts(layout);
        check.stockCounts(layout);
        return List.copyOf(check.faults);
    }

    private void sheet(int index, SheetLayout sheet) {
        List<Placement> all = sheet.placements();
        for (int i = 0; i < all.size(); i++) {
            piece(index, sheet.stock(), all.get(i));
            for (int j = i + 1; j < all.size(); j++) {
                pair(index, all.get(i), all.get(j));
            }
        }
        if (task.cuts() == CutRule.GUILLOTINE && !separable(all)) {
            add(Kind.NOT_GUILLOTINE, index, sheet.stock().name());
        }
    }

    private void piece(int sheet, Stock stock, Placement p) {
        if (p.x() < 0 || p.y() < 0 || p.x() + p.width() > stock.width() || p.y() + p.height() > stock.height()) {
            add(Kind.OUTSIDE, sheet, p.piece());
        }
        for (Defect d : stock.defects()) {
            if (Math.max(p.x(), d.x()) < Math.min(p.x() + p.width(), d.x() + d.width())
                && Math.max(p.y(), d.y()) < Math.min(p.y() + p.height(), d.y() + d.height())) {
                add(Kind.ON_DEFECT, sheet, p.piece());
            }
        }
        Piece piece = named(p.piece());
        if (piece == null) {
            add(Kind.UNKNOWN_PIECE, sheet, p.piece());
            return;
        }
        int width = p.turned() ? piece.height() : piece.width();
        int height = p.turned() ? piece.width() : piece.height();
        if (p.width() != width || p.height() != height) {
            add(Kind.WRONG_SIZE, sheet, p.piece());
        }
        if (p.turned() && !piece.mayTurn()) {
            add(Kind.TURNED, sheet, p.piece());
        }
    }

    private void pair(int sheet, Placement a, Placement b) {
        int apartX = Math.max(b.x() - a.x() - a.width(), a.x() - b.x() - b.width());
        int apartY = Math.max(b.y() - a.y() - a.height(), a.y() - b.y() - b.height());
        int apart = Math.max(apartX, apartY);
        if (apart < 0) {
            add(Kind.OVERLAP, sheet, a.piece() + ", " + b.piece());
        } else if (apart < task.knifeMargin()) {
            add(Kind.TOO_CLOSE, sheet, a.piece() + ", " + b.piece());
        }
    }

    /** Whether edge-to-edge cuts, each as wide as the knife margin, can set all pieces apart. */
    private boolean separable(List<Placement> part) {
        if (part.size() < 2) {
            return true;
        }
        for (Placement first : part) {
            for (boolean across : new boolean[] {true, false}) {
                int cut = across ? first.x() + first.width() : first.y() + first.height();
                List<Placement> before = part.stream().filter(p -> end(p, across) <= cut).toList();
                int next = cut + task.knifeMargin();
                List<Placement> after = part.stream().filter(p -> begin(p, across) >= next).toList();
                if (!after.isEmpty() && before.size() + after.size() == part.size()) {
                    // Any valid cut may be taken: it never hinders a later one.
                    return separable(before) && separable(after);
                }
            }
        }
        return false;
    }

    private static int begin(Placement p, boolean across) {
        return across ? p.x() : p.y();
    }

    private static int end(Placement p, boolean across) {
        return across ? p.x() + p.width() : p.y() + p.height();
    }

    private void pieceCounts(CuttingLayout layout) {
        Map<String, Integer> seen = new HashMap<>();
        layout.sheets().forEach(s -> s.placements().forEach(p -> seen.merge(p.piece(), 1, Integer::sum)));
        layout.unplaced().forEach(p -> seen.merge(p.name(), p.count(), Integer::sum));
        for (Piece piece : task.pieces()) {
            if (seen.getOrDefault(piece.name(), 0) != piece.count()) {
                add(Kind.WRONG_COUNT, -1, piece.name());
            }
        }
    }

    private void stockCounts(CuttingLayout layout) {
        Map<Stock, Integer> used = new LinkedHashMap<>();
        layout.sheets().forEach(s -> used.merge(s.stock(), 1, Integer::sum));
        for (Stock stock : used.keySet()) {
            if (!task.stock().contains(stock)) {
                add(Kind.UNKNOWN_STOCK, -1, stock.name());
            } else if (stock.count() != Stock.UNLIMITED && used.get(stock) > stock.count()) {
                add(Kind.STOCK_ENDS, -1, stock.name());
            }
        }
    }

    private Piece named(String name) {
        return task.pieces().stream().filter(p -> p.name().equals(name)).findFirst().orElse(null);
    }

    private void add(Kind kind, int sheet, String what) {
        faults.add(new Fault(kind, sheet, what));
    }
}
