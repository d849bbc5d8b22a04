package unthrum.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import unthrum.Scenarios;

@DisplayName("The native solver")
class NativeSolverTest {

    private static String classesLoadedFor(String... arguments) throws IOException {
        return run(System.getProperty("java.class.path"), arguments);
    }

    private static String run(String classPath, String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-verbose:class", "-cp", classPath, OnePlan.class.getName()));
        command.addAll(List.of(arguments));
        Process java = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(java.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(said).contains("plan done");
        return said;
    }

    @Test
    @DisplayName("stays untouched when nothing is short and nothing lies on the shelf")
    void untouched() throws IOException {
        assertThat(classesLoadedFor("plenty", "scenarios/country-bus.yaml")).contains("plan done: NOTHING_SHORT")
                .doesNotContain("com.google.ortools");
    }

    @Test
    @DisplayName("is loaded when there is something to share")
    void loaded() throws IOException {
        assertThat(classesLoadedFor("as written", "scenarios/one-pack-hatchback.yaml")).contains("com.google.ortools.Loader")
                .contains("plan done: PROVED_BEST");
    }

    @Test
    @DisplayName("leaves the sharing to the ranking on a computer that it does not know")
    void missing() throws IOException {
        String withoutNatives = Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                .filter(p -> !p.matches(".*ortools-(linux|darwin|win32).*"))
                .collect(Collectors.joining(File.pathSeparator));
        assertThat(run(withoutNatives, "as written", "scenarios/one-pack-hatchback.yaml")).contains("plan done: BY_RANK");
    }

    /** A program that makes one plan of a survey, as written or with plenty of everything. */
    static final class OnePlan {
        private OnePlan() {
        }

        public static void main(String[] arguments) {
            Path file = Path.of(arguments[1]);
            Plan plan = Scenarios.PLANNER.plan(arguments[0].equals("plenty") ? Scenarios.plenty(file)
                    : Scenarios.survey(file));
            System.out.println("plan done: " + plan.shares().proof().standing());
        }
    }
}
