package unthrum.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Ctrl-C")
@EnabledOnOs({OS.LINUX, OS.MAC})
class InterruptionTest {

    private static final String WORKSHOP = "scenarios/travelling-bicycle-workshop.yaml";
    /** As signals end a process in POSIX shells: 128 and the number of the signal. */
    private static final int INTERRUPTED = 128 + 2;
    /** What a thread of the program is in while it searches. */
    private static final String SEARCHING = "unthrum.plan.ExactSharing.solve";

    @TempDir
    Path folder;

    /** The workshop's panels four times over, with limits that leave the exact search busy for minutes. */
    private Path hard() throws IOException {
        String workshop = Files.readString(Path.of(WORKSHOP));
        String limits = "limits: {added mass: 48 kg, roof mass: 9 kg, money: 550 EUR}";
        assertThat(workshop).contains(limits);
        StringBuilder hard = new StringBuilder(
                workshop.replace(limits, "limits: {added mass: 120 kg, roof mass: 27 kg, money: 1300 EUR}"));
        String panels = workshop.substring(workshop.indexOf("\npanels:\n") + "\npanels:\n".length());
        for (String which : List.of("second-", "third-", "fourth-")) {
            hard.append(panels.replaceAll("(?m)^  - panel: ", "$0" + which));
        }
        return Files.writeString(folder.resolve("hard.yaml"), hard);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"advise, The best found in the time given.", "cut, To buy"})
    @DisplayName("ends a long search with the best found so far")
    void best(String command, String words) throws IOException, InterruptedException {
        List<String> java = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp", System.getProperty("java.class.path"), "unthrum.cli.Main", command, hard().toString(),
                "--time", "10 min"));
        Path out = folder.resolve("out.txt");
        Process process = new ProcessBuilder(java).redirectOutput(out.toFile()).redirectErrorStream(true).start();
        try {
            awaitSearch(process);
            assertThat(new ProcessBuilder("kill", "-INT", String.valueOf(process.pid())).start().waitFor()).isZero();
            assertThat(process.waitFor(10, TimeUnit.MINUTES)).isTrue();
        } finally {
            process.destroyForcibly();
        }
        assertThat(process.exitValue()).isEqualTo(INTERRUPTED);
        assertThat(Files.readString(out, StandardCharsets.UTF_8)).contains(words);
    }

    /** However long a busy machine takes to get there. */
    private static void awaitSearch(Process process) throws IOException, InterruptedException {
        String jcmd = Path.of(System.getProperty("java.home"), "bin", "jcmd").toString();
        boolean searches = false;
        while (!searches) {
            assertThat(process.isAlive()).as("it searches on until somebody stops it").isTrue();
            Process threads = new ProcessBuilder(jcmd, String.valueOf(process.pid()), "Thread.print")
                    .redirectErrorStream(true).start();
            searches = new String(threads.getInputStream().readAllBytes(), StandardCharsets.UTF_8).contains(SEARCHING);
            threads.waitFor();
        }
    }
}
