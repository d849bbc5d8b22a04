package unthrum.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/** The greedy start: offcuts first, and a new sheet, the largest there is, whenever a blank fits nowhere. */
final class Opening {

    private static final List<Comparator<Blank>> ORDERS = List.of(
        Comparator.comparingLong(Blank::area).reversed(),
        Comparator.comparingInt((Blank b) -> Math.max(b.width(), b.height())).reversed(),
        Comparator.comparingInt(Blank::height).reversed(),
        Comparator.comparingInt(Blank::width).reversed());

    private final CuttingTask task;
    private final SplittableRandom random;
    private final List<Stock> opened = new ArrayList<>();
    private final List<SheetSpace> spaces = new ArrayList<>();
    private final Map<Stock, Integer> left = new LinkedHashMap<>();
    private final List<Blank> pool = new ArrayList<>();

    private Opening(CuttingTask task, SplittableRandom random) {
        this.task = task;
        this.random = random;
        task.stock().stream().sorted(Comparator.comparingLong(Stock::area).reversed()).forEach(s -> {
            if (s.kind() == Stock.Kind.OFFCUT) {
                for (int i = 0; i < s.count(); i++) {
                    open(s);
                }
            } else {
                left.put(s, s.count());
            }
        });
    }

    /** How many different starts there are. */
    static int ways() {
        return ORDERS.size() * FitRule.values().length;
    }

    static Filling way(CuttingTask task, List<Blank> blanks, int way, SplittableRandom random) {
        Opening opening = new Opening(task, random);
        FitRule rule = FitRule.values()[way % FitRule.values().length];
        List<Blank> sorted = new ArrayList<>(blanks);
        sorted.sort(ORDERS.get(way / FitRule.values().length % ORDERS.size()));
        sorted.forEach(b -> opening.place(b, rule));
        return Filling.of(task, opening.opened, opening.spaces, opening.pool);
    }

    private void place(Blank blank, FitRule rule) {
        Spot spot = new Spot();
        for (SheetSpace space : spaces) {
            space.offer(blank, rule, random, spot);
        }
        for (Stock stock : left.keySet()) {
            if (!spot.found() && left.get(stock) > 0 && empty(stock).takes(blank)) {
                left.merge(stock, -1, Integer::sum);
                SheetSpace space = open(stock);
                while (!spot.found()) {
                    space.offer(blank, rule, random, spot);
                }
            }
        }
        if (spot.found()) {
            spot.space.place(blank, spot);
        } else {
            pool.add(blank);
        }
    }

    private SheetSpace open(Stock stock) {
        SheetSpace space = empty(stock);
        opened.add(stock);
        spaces.add(space);
        return space;
    }

    private SheetSpace empty(Stock stock) {
        return SheetSpace.blank(stock, task.cuts(), task.knifeMargin());
    }
}
