package unthrum.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Where the jar starts. A command that is over in a second or two spends most of its time on loading classes and on the
 * thorough compiler of the Java machine, which pays only in long runs; both can be spared only before the machine
 * starts. So a second machine runs such a command, without that compiler, with the collector that costs least, and with
 * the archive of loaded classes that the build leaves beside the jar. What it reads, prints and returns passes straight
 * through. Long searches run here, and so does everything where the system does not say how this process was started.
 */
public final class Launcher {

    private static final Set<String> SHORT = Set.of("advise", "ask", "audit", "compare", "handover", "why");
    private static final List<String> QUICK = List.of("-XX:TieredStopAtLevel=1", "-Xlog:disable",
            "-Xlog:all=error:stderr");

    private static final String COLLECTOR = "-XX:+UseSerialGC";

    private Launcher() {
    }

    public static void main(String[] arguments) throws IOException, InterruptedException {
        boolean brief = arguments.length > 0 && SHORT.contains(arguments[0]);
        Optional<List<String>> java = brief ? quickly(ProcessHandle.current().info()) : Optional.empty();
        if (java.isEmpty()) {
            Main.main(arguments);
        } else {
            List<String> command = new ArrayList<>(java.get());
            command.addAll(Arrays.asList(arguments));
            System.exit(run(command));
        }
    }

    /**
     * The command that starts the program as this process was started, but quickly; empty where the jar was not started
     * by {@code -jar}, where a compiler was chosen already, or where nobody knows.
     */
    static Optional<List<String>> quickly(ProcessHandle.Info process) {
        List<String> own = List.of(process.arguments().orElse(new String[0]));
        int jar = own.indexOf("-jar");
        if (process.command().isEmpty() || jar < 0 || own.stream().limit(jar).anyMatch(a -> a.contains("Tiered"))) {
            return Optional.empty();
        }
        Path program = Path.of(own.get(jar + 1)).toAbsolutePath().normalize();
        Path archive = program.resolveSibling(program.getFileName().toString().replace(".jar", ".jsa"));
        List<String> command = new ArrayList<>(List.of(process.command().get()));
        command.addAll(own.subList(0, jar));
        command.addAll(QUICK);
        if (own.stream().limit(jar).noneMatch(a -> a.startsWith("-XX:+Use") && a.endsWith("GC"))) {
            command.add(COLLECTOR);
        }
        if (Files.exists(archive)) {
            command.add("-XX:SharedArchiveFile=" + archive);
        }
        command.addAll(List.of("-cp", program.toString(), Main.class.getName()));
        return Optional.of(command);
    }

    /** An end that is asked of this process is asked of the other, which may still have something to print. */
    private static int run(List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).inheritIO().start();
        Thread passOn = new Thread(() -> {
            process.destroy();
            process.onExit().join();
        });
        Runtime.getRuntime().addShutdownHook(passOn);
        return process.waitFor();
    }
}
