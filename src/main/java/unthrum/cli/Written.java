package unthrum.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.Map;

/** Writes files whole: each beside its place and then moved there, so that there is never half a file. */
final class Written {

    private Written() {
    }

    /** One file in a folder that is there; an older one is replaced. */
    static void file(Path file, String text) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (!Files.isDirectory(folder) || Files.isDirectory(file)) {
            throw new WrongUse("cannot write " + file + ": it is a folder, or its folder is not there");
        }
        all(Map.of(file, text));
    }

    /** All or none: the files are moved into place when the last of them has been written. */
    static void all(Map<Path, String> texts) throws IOException {
        Map<Path, Path> beside = new LinkedHashMap<>();
        try {
            for (Map.Entry<Path, String> entry : texts.entrySet()) {
                Path part = entry.getKey().resolveSibling("." + entry.getKey().getFileName() + ".part");
                beside.put(part, entry.getKey());
                Files.write(part, entry.getValue().getBytes(StandardCharsets.UTF_8));
            }
            for (Map.Entry<Path, Path> entry : beside.entrySet()) {
                Files.move(entry.getKey(), entry.getValue(), StandardCopyOption.REPLACE_EXISTING,
                        StandardCopyOption.ATOMIC_MOVE);
            }
        } finally {
            for (Path part : beside.keySet()) {
                Files.deleteIfExists(part);
            }
        }
    }
}
