package unthrum.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
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
        checkReplaceable(file);
        all(Map.of(file, text));
    }

    /** Wrong use where no file can be written. */
    static void checkReplaceable(Path file) {
        if (!Files.isDirectory(file.toAbsolutePath().getParent()) || Files.isDirectory(file)) {
            throw new WrongUse("cannot write " + file + ": it is a folder, or its folder is not there");
        }
    }

    /** A new file; one that is there already is wrong use, and stays as it is. */
    static void anew(Path file, byte[] bytes) throws IOException {
        checkAbsent(file);
        Path beside = Files.createTempFile(file.toAbsolutePath().getParent(), ".unthrum", ".part");
        try {
            Files.write(beside, bytes);
            Files.createLink(file, beside);
        } catch (FileAlreadyExistsException e) {
            throw new WrongUse(file + " is there already; nothing was written");
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    /** Wrong use where the file is there already, or where its folder is not. */
    static void checkAbsent(Path file) {
        if (Files.exists(file)) {
            throw new WrongUse(file + " is there already; nothing was written");
        }
        Path folder = file.toAbsolutePath().getParent();
        if (!Files.isDirectory(folder)) {
            throw new WrongUse("no folder " + folder + "; nothing was written");
        }
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
