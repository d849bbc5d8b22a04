package unthrum.reading;

import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;

/** Reads a shelf from a text, as the tests write it. */
final class Texts {
    private Texts() {
    }

    static Shelf shelf(String yaml) {
        return YamlReader.read("shelf.yaml", bytes(yaml.getBytes(StandardCharsets.UTF_8)), Shelf.class);
    }

    /** A shelf with one more line; what is wrong in that line then stands in line 2. */
    static Shelf with(String line) {
        return shelf("shelf: left\n" + line + "\n");
    }

    static String problems(String yaml) {
        return problems(yaml.getBytes(StandardCharsets.UTF_8));
    }

    static String problemsWith(String line) {
        return problems("shelf: left\n" + line + "\n");
    }

    static String problems(byte[] yaml) {
        Problems thrown = catchThrowableOfType(Problems.class,
                () -> YamlReader.read("shelf.yaml", bytes(yaml), Shelf.class));
        return thrown == null ? "no problem" : thrown.getMessage();
    }

    private static ByteArrayInputStream bytes(byte[] text) {
        return new ByteArrayInputStream(text);
    }
}
