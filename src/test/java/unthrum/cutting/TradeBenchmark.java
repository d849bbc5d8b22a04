package unthrum.cutting;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * How often the least number of sheets is proved on tasks of the trade's own size: patches for bays, drawn at random,
 * 5 to 60 on 1 to 10 sheets by area. By hand: {@code java -cp target/classes:target/test-classes
 * unthrum.cutting.TradeBenchmark TASKS SECONDS SEED}; seconds of the thread's processor time a task.
 */
public final class TradeBenchmark {

    /** The thread that searches, whoever asks. */
    private static final long MAIN = Thread.currentThread().getId();

    private static final int KNIFE_MARGIN = 20;
    /** Tenths of a millimetre: common sizes of damping sheets, and a large one of foam. */
    private static final int[][] SHEETS = {{5000, 3000}, {7500, 5000}, {10000, 5000}, {20000, 10000}};

    private TradeBenchmark() {
    }

    public static void main(String[] args) {
        int tasks = Integer.parseInt(args[0]);
        double seconds = Double.parseDouble(args[1]);
        SplittableRandom random = new SplittableRandom(Long.parseLong(args[2]));
        int proved = 0;
        for (int i = 0; i < tasks; i++) {
            CuttingTask task = draw(random);
            double start = cpuSeconds();
            AtomicBoolean least = new AtomicBoolean();
            CuttingLayout layout = LayoutPlanner.plan(task, Search.ofSteps(1, Long.MAX_VALUE)
                .cancelled(() -> least.get() || cpuSeconds() - start > seconds)
                .listener(p -> least.set(p.cost() <= p.bound())));
            if (!LayoutCheck.faults(layout).isEmpty() || !layout.unplaced().isEmpty()) {
                throw new IllegalStateException("task " + i + ": " + LayoutCheck.faults(layout));
            }
            proved += layout.provedLeast() ? 1 : 0;
            System.out.printf("task %d, %s cuts: %d pieces on %d sheets, lower bound %d, one sheet fewer would be %.1f %% "
                + "full, %.1f s%n", i, task.cuts(), task.pieces().stream().mapToInt(Piece::count).sum(), layout.cost(),
                layout.bound(), full(task, layout.cost() - 1), cpuSeconds() - start);
        }
        System.out.printf("proved least: %d of %d%n", proved, tasks);
    }

    /** How full so many sheets would be, knife margins included, in per cent. */
    private static double full(CuttingTask task, int sheets) {
        int margin = task.knifeMargin();
        Stock sheet = task.stock().get(0);
        double room = (double) sheets * (sheet.width() + margin) * (sheet.height() + margin);
        return 100 * Blank.of(task).stream().mapToLong(Blank::area).sum() / room;
    }

    private static CuttingTask draw(SplittableRandom random) {
        int[] sheet = SHEETS[random.nextInt(SHEETS.length)];
        int count = random.nextInt(5, 61);
        double wanted = random.nextDouble(1, 10) * sheet[0] * sheet[1];
        double mean = Math.sqrt(wanted / count);
        boolean direction = random.nextInt(4) == 0;
        List<Piece> pieces = new ArrayList<>();
        for (int left = count; left > 0;) {
            int copies = Math.min(left, random.nextInt(1, 5));
            int longest = (int) Math.min(sheet[0], mean * random.nextDouble(0.5, 2));
            int shortest = (int) Math.min(Math.min(sheet[1], longest), mean * random.nextDouble(0.3, 1.2));
            pieces.add(new Piece("patch " + pieces.size(), longest, shortest, copies, !direction));
            left -= copies;
        }
        return new CuttingTask(pieces, List.of(Stock.unlimited("sheet", sheet[0], sheet[1])),
            CutRule.values()[random.nextInt(2)], KNIFE_MARGIN);
    }

    private static double cpuSeconds() {
        return ManagementFactory.getThreadMXBean().getThreadCpuTime(MAIN) / 1e9;
    }
}
