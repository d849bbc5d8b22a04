package unthrum.benchmark;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/**
 * Whole processes, cold: {@code advise} on a survey against {@code java -version} and an empty picocli program
 * together. Arguments: the jar, then surveys. Prints the median wall time of each of five rounds and the ratio.
 */
public final class ColdStartBenchmark {

    private static final int ROUNDS = 5;

    private ColdStartBenchmark() {
    }

    /** A program that does nothing but read its command line. */
    @Command(name = "empty")
    public static final class Empty implements Runnable {
        @Override
        public void run() {
        }

        public static void main(String[] args) {
            System.exit(new CommandLine(new Empty()).execute(args));
        }
    }

    public static void main(String[] args) throws IOException, InterruptedException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String classes = System.getProperty("java.class.path");
        for (String survey : Arrays.copyOfRange(args, 1, args.length)) {
            List<Double> bare = new ArrayList<>();
            List<Double> advise = new ArrayList<>();
            for (int i = 0; i < ROUNDS; i++) {
                bare.add(seconds(java, "-version") + seconds(java, "-cp", classes, Empty.class.getName()));
                advise.add(seconds(java, "-jar", args[0], "advise", survey));
            }
            System.out.printf("%s: java -version and an empty program %.2f s, advise %.2f s, ratio %.1f%n", survey,
                    median(bare), median(advise), median(advise) / median(bare));
        }
    }

    private static double seconds(String... command) throws IOException, InterruptedException {
        long from = System.nanoTime();
        int code = new ProcessBuilder(command).redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD).start().waitFor();
        if (code != 0) {
            throw new IllegalStateException(String.join(" ", command) + " ended with " + code);
        }
        return (System.nanoTime() - from) / 1e9;
    }

    private static double median(List<Double> values) {
        return values.stream().sorted().skip(values.size() / 2).findFirst().orElseThrow();
    }
}
