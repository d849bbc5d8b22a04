package unthrum.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A short command is started quickly")
class LauncherTest {

    @TempDir
    Path folder;

    /** A process as the system tells of it. */
    private record Told(Optional<String> command, Optional<String[]> arguments) implements ProcessHandle.Info {

        static Told of(String... arguments) {
            return new Told(Optional.of("java"), Optional.of(arguments));
        }

        @Override
        public Optional<String> commandLine() {
            return Optional.empty();
        }

        @Override
        public Optional<Instant> startInstant() {
            return Optional.empty();
        }

        @Override
        public Optional<Duration> totalCpuDuration() {
            return Optional.empty();
        }

        @Override
        public Optional<String> user() {
            return Optional.empty();
        }
    }

    @Nested
    @DisplayName("by a second machine")
    class Second {

        @Test
        @DisplayName("that gets what the first was told, and spares the thorough compiler")
        void flags() {
            assertThat(Launcher.quickly(Told.of("-Xmx300m", "-jar", folder + "/unthrum.jar", "advise", "van.yaml")))
                    .hasValueSatisfying(c -> assertThat(c).startsWith("java", "-Xmx300m", "-XX:TieredStopAtLevel=1")
                            .endsWith("-cp", folder + "/unthrum.jar", "unthrum.cli.Main").doesNotContain("van.yaml"));
        }

        @Test
        @DisplayName("from the archive of classes beside the jar, where there is one")
        void archive() throws IOException {
            String archive = "-XX:SharedArchiveFile=" + folder + "/unthrum.jsa";
            Told told = Told.of("-jar", folder + "/unthrum.jar", "advise");
            assertThat(Launcher.quickly(told).orElseThrow()).doesNotContain(archive);
            Files.createFile(folder.resolve("unthrum.jsa"));
            assertThat(Launcher.quickly(told).orElseThrow()).contains(archive);
        }
    }

    @Nested
    @DisplayName("but by the first one itself")
    class First {

        @Test
        @DisplayName("where the system does not tell how it was started")
        void unknown() {
            assertThat(Launcher.quickly(new Told(Optional.empty(), Optional.empty()))).isEmpty();
            assertThat(Launcher.quickly(new Told(Optional.of("java"), Optional.empty()))).isEmpty();
        }

        @Test
        @DisplayName("where it was not started from a jar")
        void classes() {
            assertThat(Launcher.quickly(Told.of("-cp", "unthrum.jar", "unthrum.cli.Launcher", "advise"))).isEmpty();
        }

        @Test
        @DisplayName("where somebody chose the compiler")
        void chosen() {
            assertThat(Launcher.quickly(Told.of("-XX:-TieredCompilation", "-jar", "unthrum.jar", "advise"))).isEmpty();
        }
    }

    @Nested
    @DisplayName("and says and returns the same")
    class Same {

        private Path jar;

        /** A jar that holds nothing but where the classes are. */
        @BeforeEach
        void pack() throws IOException {
            Manifest manifest = new Manifest();
            manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
            manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, Launcher.class.getName());
            manifest.getMainAttributes().put(Attributes.Name.CLASS_PATH,
                    Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                            .map(p -> Path.of(p).toUri().toString()).collect(Collectors.joining(" ")));
            jar = folder.resolve("program.jar");
            try (OutputStream out = Files.newOutputStream(jar)) {
                new JarOutputStream(out, manifest).close();
            }
        }

        private String ran(String... arguments) throws IOException, InterruptedException {
            List<String> command = new ArrayList<>(List.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString()));
            command.addAll(List.of(arguments));
            Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
            String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            return process.waitFor() + " " + said;
        }

        @Test
        @DisplayName("on a plan")
        void plan() throws IOException, InterruptedException {
            String survey = "scenarios/one-pack-hatchback.yaml";
            assertThat(ran("-jar", jar.toString(), "advise", survey)).startsWith("0 ")
                    .isEqualTo(ran("-cp", jar.toString(), Main.class.getName(), "advise", survey));
        }

        @Test
        @DisplayName("on a file that is not there")
        void missing() throws IOException, InterruptedException {
            assertThat(ran("-jar", jar.toString(), "advise", "nowhere.yaml")).startsWith("2 ").contains("nowhere.yaml")
                    .isEqualTo(ran("-cp", jar.toString(), Main.class.getName(), "advise", "nowhere.yaml"));
        }
    }
}
