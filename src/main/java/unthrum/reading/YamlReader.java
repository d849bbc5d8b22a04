package unthrum.reading;

import java.io.InputStream;
import java.nio.file.Path;

/**
 * Reads a YAML file into a record, or throws all {@link Problems} of the file at once.
 *
 * <p>Keys are the names of the record's components in words ({@link Words#key}), enum constants their words
 * ({@link Words#of}). An {@code Optional} may be absent or {@code unknown}; everything else is required. A list of one
 * may be written without brackets, an empty one as {@code none}. A record whose first component is an enum and whose
 * others are optional may be written as that word alone. Quantities and money carry their units.
 */
public final class YamlReader {
    private YamlReader() {
    }

    public static <T extends Record> T read(Path file, Class<T> type, Check<T> check) {
        return read(file.toString(), SourceText.of(file), type, check);
    }

    /** @param name what to call the stream in problems */
    public static <T extends Record> T read(String name, InputStream in, Class<T> type, Check<T> check) {
        return read(name, SourceText.of(name, in), type, check);
    }

    private static <T extends Record> T read(String name, String text, Class<T> type, Check<T> check) {
        Node root = NodeTree.of(name, text);
        Places places = new Places(name);
        T value = type.cast(new Binder(places).record(root, type, ""));
        if (value != null) {
            check.check(value, places);
        }
        if (!places.problems().isEmpty()) {
            throw new Problems(places.problems());
        }
        return value;
    }

    /** For files whose values need no check against each other. */
    public static <T extends Record> T read(Path file, Class<T> type) {
        return read(file, type, (value, places) -> { });
    }

    /** For streams whose values need no check against each other. */
    public static <T extends Record> T read(String name, InputStream in, Class<T> type) {
        return read(name, in, type, (value, places) -> { });
    }
}
