package unthrum.drill;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.stream.Collectors;
import unthrum.reading.YamlReader;

/**
 * Where progress is kept. The file is read before it is written, so that a damaged one is never written over, and
 * replaced as a whole, so that it is the old one or the new one whenever the work is broken off.
 */
public record ProgressFile(Path path) {

    private static final String HEAD =
            "# What was practised; 'unthrum drill' rewrites it after every answer, and shows it with --report.\n";

    /** What the file says; nothing when there is none yet. A damaged file throws its problems. */
    public Progress read() {
        return Files.exists(path) ? YamlReader.read(path, Progress.class, Progress::check) : Progress.NONE;
    }

    /** Adds an answer. When this returns it is on the disk. */
    public Progress add(Mark mark, LocalDate today) {
        Progress after = read().after(mark.bySubject(), today);
        try {
            replace(text(after));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return after;
    }

    private void replace(String text) throws IOException {
        // a file that is linked to is replaced where it lies
        Path file = Files.exists(path) ? path.toRealPath() : path.toAbsolutePath();
        Files.createDirectories(file.getParent());
        // not a temporary file of the library's, which only its owner may read: the master reads this one too
        Path beside = file.resolveSibling("." + file.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try {
            try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.WRITE, StandardOpenOption.CREATE,
                    StandardOpenOption.TRUNCATE_EXISTING)) {
                ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
                while (bytes.hasRemaining()) {
                    channel.write(bytes);
                }
                channel.force(true);
            }
            Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    private static String text(Progress progress) {
        return HEAD + "practised:" + (progress.practised().isEmpty() ? " none" : "") + "\n"
                + progress.practised().stream().map(ProgressFile::line).collect(Collectors.joining());
    }

    private static String line(Practised p) {
        return "  - {subject: '" + p.subject().replace("'", "''") + "', asked: " + p.asked() + ", right: " + p.right()
                + ", wrong reason: " + p.wrongReason() + ", box: " + p.box() + ", due: " + p.due() + "}\n";
    }
}
