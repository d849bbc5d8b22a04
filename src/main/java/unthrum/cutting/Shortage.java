package unthrum.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Planning with a limited number of equal sheets as if there were enough, and then doing without the emptiest. */
final class Shortage {

    private Shortage() {
    }

    static CuttingLayout plan(CuttingTask task, Stock sheet, Function<CuttingTask, CuttingLayout> planner) {
        Stock endless = Stock.unlimited(sheet.name(), sheet.width(), sheet.height());
        CuttingLayout plenty = planner.apply(new CuttingTask(task.pieces(), swap(task.stock(), sheet, endless),
            task.cuts(), task.knifeMargin()));
        List<SheetLayout> kept = new ArrayList<>(plenty.sheets());
        List<SheetLayout> surplus = kept.stream().filter(s -> s.stock().equals(endless))
            .sorted(Comparator.comparingLong(SheetLayout::pieceArea))
            .limit(Math.max(0, plenty.wholeSheets() - sheet.count())).toList();
        surplus.forEach(kept::remove);
        kept.replaceAll(s -> s.stock().equals(endless) ? new SheetLayout(sheet, s.placements()) : s);
        List<Piece> unplaced = new ArrayList<>(plenty.unplaced());
        unplaced.addAll(piecesOf(task, surplus));
        return new CuttingLayout(task, kept, unplaced, plenty.bound());
    }

    private static List<Stock> swap(List<Stock> all, Stock old, Stock replacement) {
        return all.stream().map(s -> s.equals(old) ? replacement : s).toList();
    }

    private static List<Piece> piecesOf(CuttingTask task, List<SheetLayout> sheets) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        sheets.forEach(s -> s.placements().forEach(p -> counts.merge(p.piece(), 1, Integer::sum)));
        return task.pieces().stream().filter(p -> counts.containsKey(p.name()))
            .map(p -> new Piece(p.name(), p.width(), p.height(), counts.get(p.name()), p.mayTurn())).toList();
    }
}
