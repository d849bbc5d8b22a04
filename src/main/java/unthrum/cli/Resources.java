package unthrum.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** Files in the jar. */
final class Resources {

    private Resources() {
    }

    /** The file's content; a file that is not there is a defect of the build. */
    static byte[] bytes(String name) {
        try (InputStream in = Resources.class.getClassLoader().getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the jar holds no " + name);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
