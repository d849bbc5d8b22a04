package unthrum.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static unthrum.reading.Texts.problems;
import static unthrum.reading.Texts.problemsWith;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A file that is no survey at all gets one problem with a remedy")
class RefusedFilesTest {

    @Nested
    @DisplayName("Files that cannot be read")
    class Unreadable {
        @TempDir
        Path folder;

        private String problem(Path file) {
            Problems thrown = catchThrowableOfType(Problems.class, () -> YamlReader.read(file, Shelf.class));
            assertThat(thrown.all()).hasSize(1);
            assertThat(thrown.getStackTrace()).isEmpty();
            return thrown.getMessage();
        }

        @Test
        @DisplayName("a file that is not there")
        void missing() {
            Path file = folder.resolve("no.yaml");
            assertThat(problem(file)).isEqualTo(file + ": there is no such file; expected an existing file;"
                    + " check the folder and the spelling");
        }

        @Test
        @DisplayName("a folder")
        void folder() {
            assertThat(problem(folder)).isEqualTo(folder + ": this is a folder; expected a file;"
                    + " name one file inside it");
        }

        @Test
        @DisplayName("a file without read permission, where the system holds one to it")
        void forbidden() throws IOException {
            Path file = Files.writeString(folder.resolve("secret.yaml"), "shelf: left");
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
            assumeFalse(Files.isReadable(file), "root reads everything");
            assertThat(problem(file)).isEqualTo(file + DENIED);
        }

        @Test
        @DisplayName("a stream that the system refuses, or that breaks off")
        void broken() {
            assertThat(streamed(new AccessDeniedException("secret.yaml"))).isEqualTo("secret.yaml" + DENIED);
            assertThat(streamed(new IOException("disk error"))).isEqualTo("secret.yaml: the file cannot be read to its"
                    + " end; expected a readable file; copy it to another disk and try again");
        }

        private static final String DENIED = ": you may not read this file; expected a file with read permission;"
                + " ask its owner for the permission to read it";

        private String streamed(IOException fault) {
            InputStream in = new InputStream() {
                @Override
                public int read() throws IOException {
                    throw fault;
                }
            };
            return catchThrowableOfType(Problems.class, () -> YamlReader.read("secret.yaml", in, Shelf.class))
                    .getMessage();
        }

        @Test
        @DisplayName("50 MB of input is refused after the first 4 MB")
        void large() throws IOException {
            Path file = folder.resolve("large.yaml");
            try (var channel = Files.newByteChannel(file, java.nio.file.StandardOpenOption.CREATE_NEW,
                    java.nio.file.StandardOpenOption.WRITE)) {
                channel.position(50L * 1024 * 1024 - 1);
                channel.write(java.nio.ByteBuffer.wrap(new byte[] {'x'}));
            }
            assertThat(problem(file)).isEqualTo(file + ": more than 4 MB; expected a text written by hand;"
                    + " check that this is the right file, or split it");
        }
    }

    @Nested
    @DisplayName("Files that are no UTF-8 text")
    class NoText {
        @Test
        @DisplayName("a binary file")
        void binary() {
            assertThat(problems(new byte[] {'P', 'K', 3, 4, 0, 0, (byte) 0x80})).isEqualTo(
                    "shelf.yaml:1:3: the control character U+0003; expected printable text; delete that character");
            assertThat(problems(new byte[] {'a', '\n', 'b', 0, (byte) 0xFF})).isEqualTo(
                    "shelf.yaml:2:2: a binary file; expected a text; check that this is the right file");
        }

        @Test
        @DisplayName("Latin-1 and UTF-16")
        void encodings() {
            assertThat(problems("shelf: left\nnotes: {a: grün}".getBytes(StandardCharsets.ISO_8859_1))).isEqualTo(
                    "shelf.yaml:2:14: a byte that is not UTF-8 (0xFC); expected text in UTF-8; save it again as UTF-8");
            assertThat(problems("\uFEFFshelf: left".getBytes(StandardCharsets.UTF_16BE))).isEqualTo(
                    "shelf.yaml:1:1: text in the encoding UTF-16; expected text in UTF-8; save it again as UTF-8");
            assertThat(problems("\uFEFFshelf: left".getBytes(StandardCharsets.UTF_16LE))).contains("UTF-16");
            assertThat(problems(new byte[] {'a', (byte) 0xC3})).contains("1:2: a byte that is not UTF-8 (0xC3)");
        }
    }

    @Nested
    @DisplayName("Texts that are no YAML, or more than one value each")
    class NoYaml {
        @Test
        @DisplayName("nothing, white space, comments only")
        void empty() {
            String empty = "shelf.yaml:1:1: an empty file; expected keys and values;"
                    + " fill it in, or begin with a starter survey";
            assertThat(problems("")).isEqualTo(empty);
            assertThat(problems(" \n\n")).isEqualTo(empty);
            assertThat(problems("# later\n")).isEqualTo(empty);
            assertThat(problems("---\n")).contains("nothing; expected the keys");
        }

        @Test
        @DisplayName("slips in the form")
        void syntax() {
            assertThat(problemsWith("goods:\n\t- foam")).isEqualTo(
                    "shelf.yaml:3:1: a tab; expected spaces; replace every tab by spaces");
            assertThat(problemsWith("place: wall: red")).isEqualTo("shelf.yaml:2:12: a second colon in one line;"
                    + " expected one key and one value in a line;"
                    + " put text that holds a colon in quotes, or begin a new line");
            assertThat(problemsWith("goods: [foam")).isEqualTo("shelf.yaml:3:1: a bracket is still open here;"
                    + " expected a comma or the closing bracket; close the bracket that was opened before");
            assertThat(problemsWith("notes: {a: 'b")).isEqualTo("shelf.yaml:3:1: the file ends inside quotes;"
                    + " expected a closing quote; close the quotes");
            assertThat(problemsWith("boards 2\nslope: 1")).isEqualTo("shelf.yaml:3:1: the line before has no colon;"
                    + " expected a key, a colon and a value; write it as 'key: value'");
            assertThat(problems("place:\n    wall: red\n  room: attic")).isEqualTo("shelf.yaml:3:3: an indent that fits"
                    + " no line above; expected the keys of one block in the same column;"
                    + " line this up with the keys that it belongs to");
            assertThat(problemsWith("locked: @yes")).startsWith("shelf.yaml:2:9: this is not YAML (");
        }

        @Test
        @DisplayName("a second document")
        void twoDocuments() {
            assertThat(problems("shelf: left\n---\nshelf: right")).isEqualTo("shelf.yaml:2:1: a second document begins;"
                    + " expected one document in a file;"
                    + " delete this line or move what follows to a file of its own");
        }

        @Test
        @DisplayName("anchors, aliases and tags, where they stand")
        void references() {
            assertThat(problemsWith("goods: &a [foam]")).isEqualTo("shelf.yaml:2:8: the anchor '&a'; expected a value;"
                    + " delete the anchor and write each value out where it belongs");
            assertThat(problemsWith("goods: *a")).isEqualTo("shelf.yaml:2:8: the alias '*a'; expected a value;"
                    + " write the value out here");
            assertThat(problemsWith("goods: !!java.util.Date [foam]")).isEqualTo("shelf.yaml:2:8: the tag"
                    + " 'tag:yaml.org,2002:java.util.Date'; expected a plain value; delete the tag");
        }

        @Test
        @DisplayName("an alias bomb, a depth bomb, far too many entries")
        void bombs() {
            assertThat(problems(Bombs.ALIASES)).startsWith("shelf.yaml:1:4: the anchor '&a'").doesNotContain("\n");
            String deep = "more than 30 blocks inside one another; expected a flat list of keys;"
                    + " check the brackets and the indent";
            assertThat(problems(Bombs.brackets(10_000))).isEqualTo("shelf.yaml:1:32: " + deep);
            assertThat(problems(Bombs.dashes(4_000))).isEqualTo("shelf.yaml:1:63: " + deep);
            assertThat(problems(Bombs.indents(1_000))).contains(deep);
            assertThat(problems("[".repeat(10_001))).isEqualTo("shelf.yaml:1:1: a line of 10001 characters;"
                    + " expected a text written by hand; break the line");
            assertThat(problems(Bombs.entries(1_000_000))).endsWith("more than 200000 entries;"
                    + " expected a text written by hand; split the file");
        }

        @Test
        @DisplayName("the worst files of 4 MB pass through a small memory")
        void smallMemory() throws Exception {
            Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-Xmx256m", "-XX:+UseSerialGC", "-cp", System.getProperty("java.class.path"),
                    Bombs.class.getName()).redirectErrorStream(true).start();
            String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(output.lines()).hasSize(Bombs.worst().size())
                    .allMatch(line -> line.matches("[0-9]+ problems"));
            assertThat(process.waitFor()).isZero();
        }
    }
}
