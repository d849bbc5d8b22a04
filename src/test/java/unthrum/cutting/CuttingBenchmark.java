package unthrum.cutting;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Compares the planner with published best values, one thread, every layout checked; seconds are of the thread's
 * processor time, so that a busy machine does not falsify them. By hand:
 * {@code mvn -q test-compile} and {@code java -cp target/classes:target/test-classes unthrum.cutting.CuttingBenchmark
 * FOLDER SECONDS EVERY FILES VARIANTS}: the folder of the instance files, seconds an instance, every how many
 * instances of a file one is taken (by their order in the file, the first included), and patterns for file names and
 * variants (OF, RF, OG, RG). Each search ends early once its bound proves it least; with
 * {@code -DstopAtBest=true} already at the best known value. {@code -Dseed=N} takes another seed than 1, since one seed
 * may be lucky. Prints each result with its proved lower bound, or only those that differ from the best known with
 * {@code -Ddifferent=true}, and then the families.
 */
public final class CuttingBenchmark {

    /** The thread that searches, whoever asks. */
    private static final long MAIN = Thread.currentThread().getId();

    private final Map<String, Tally> tallies = new TreeMap<>();
    private final double seconds;
    private final long seed = Long.getLong("seed", 1);
    private final boolean onlyDifferent = Boolean.getBoolean("different");
    private final boolean stopAtBest = Boolean.getBoolean("stopAtBest");

    private CuttingBenchmark(double seconds) {
        this.seconds = seconds;
    }

    /** What a family came to. */
    private static final class Tally {
        private int count;
        private int proved;
        private double ratios;
        private double boundRatios;
    }

    public static void main(String[] args) throws IOException {
        CuttingBenchmark benchmark = new CuttingBenchmark(Double.parseDouble(args[1]));
        int every = Integer.parseInt(args[2]);
        List<Path> files;
        try (Stream<Path> listed = Files.list(Path.of(args[0]))) {
            files = listed.filter(f -> f.getFileName().toString().matches("(" + args[3] + ")\\.csv")).sorted().toList();
        }
        for (Path file : files) {
            List<PublishedInstance> rows = PublishedInstance.read(file);
            List<String> names = rows.stream().map(PublishedInstance::name).distinct().toList();
            rows.stream().filter(r -> r.variant().matches(args[4]) && names.indexOf(r.name()) % every == 0)
                .forEach(benchmark::run);
        }
        benchmark.print();
    }

    private void run(PublishedInstance instance) {
        AtomicBoolean proved = new AtomicBoolean();
        long[] steps = new long[1];
        Deadline deadline = new Deadline(cpuSeconds() + seconds);
        CuttingLayout layout = LayoutPlanner.plan(instance.task(),
            Search.ofSteps(seed, Long.MAX_VALUE).cancelled(() -> proved.get() || deadline.isOver()).listener(p -> {
                proved.set(p.cost() <= (stopAtBest ? instance.bestKnown() : p.bound()));
                steps[0] = p.steps();
            }));
        List<LayoutCheck.Fault> faults = LayoutCheck.faults(layout);
        if (!faults.isEmpty() || !layout.unplaced().isEmpty()) {
            throw new IllegalStateException(instance.name() + " " + instance.variant() + ": " + faults);
        }
        if (layout.bound() > instance.bestKnown()) {
            System.out.println("bound above best known: " + instance.name() + " " + instance.variant());
        }
        for (String key : List.of(instance.family() + " " + instance.variant(), "all " + instance.variant())) {
            Tally tally = tallies.computeIfAbsent(key, k -> new Tally());
            tally.count++;
            tally.proved += layout.provedLeast() ? 1 : 0;
            tally.ratios += (double) layout.cost() / instance.bestKnown();
            tally.boundRatios += (double) layout.bound() / instance.bestKnown();
        }
        if (!onlyDifferent || layout.cost() != instance.bestKnown()) {
            System.out.printf("%s %s: %d, lower bound %d%s, best known %d (bound %d), %d steps%n", instance.name(),
                instance.variant(), layout.cost(), layout.bound(), layout.provedLeast() ? ", proved least" : "",
                instance.bestKnown(), instance.lowerBound(), steps[0]);
        }
    }

    /** Asks for the time now and then only, since asking takes its time. */
    private static final class Deadline {

        private static final int EVERY = 64;

        private final double end;
        private int asked;
        private boolean over;

        Deadline(double end) {
            this.end = end;
        }

        boolean isOver() {
            over |= asked++ % EVERY == 0 && cpuSeconds() > end;
            return over;
        }
    }

    /** Processor time of this thread: a busy machine does not falsify it. */
    private static double cpuSeconds() {
        return ManagementFactory.getThreadMXBean().getThreadCpuTime(MAIN) / 1e9;
    }

    private void print() {
        System.out.printf("%-22s %5s %12s %13s %7s%n", "family", "count", "cost/best", "bound/best", "proved");
        tallies.forEach((key, t) -> System.out.printf("%-22s %5d %12.4f %13.4f %6.0f%%%n", key, t.count,
            t.ratios / t.count, t.boundRatios / t.count, 100.0 * t.proved / t.count));
        System.out.println(tallies.keySet().stream().map(k -> k.split(" ")[0]).distinct()
            .collect(Collectors.joining(", ", "families: ", "")));
    }
}
