package unthrum.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Java orders its unmodifiable sets and maps anew in each process; nothing that is printed may follow that order. */
@DisplayName("A plan made in a new process")
class NewProcessTest {

    private static String advise(String survey) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp", System.getProperty("java.class.path"), "unthrum.cli.Main", "advise", survey, "--json"))
                .redirectError(ProcessBuilder.Redirect.INHERIT).start();
        String plan = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).isZero();
        return plan;
    }

    @Test
    @DisplayName("is the same plan, byte for byte, every time")
    void same() throws IOException, InterruptedException {
        Set<String> plans = new HashSet<>();
        for (int i = 0; i < 3; i++) {
            plans.add(advise("scenarios/travelling-bicycle-workshop.yaml"));
        }
        assertThat(plans).hasSize(1);
    }
}
