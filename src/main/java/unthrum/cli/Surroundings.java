package unthrum.cli;

import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Map;

/**
 * What the program runs in: where it may write, the environment, what the other end can show, what it says, and what
 * time it is.
 *
 * @param terminal whether a person reads along
 * @param charset  what the other end can show
 */
record Surroundings(PrintStream out, PrintStream err, Map<String, String> environment, boolean terminal,
                    Charset charset, InputStream in, Clock clock) {

    /** With the input and the clock of this machine. */
    Surroundings(PrintStream out, PrintStream err, Map<String, String> environment, boolean terminal, Charset charset) {
        this(out, err, environment, terminal, charset, System.in, Clock.systemDefaultZone());
    }

    static Surroundings ofProcess() {
        String encoding = System.getProperty("sun.stdout.encoding",
                System.getProperty("native.encoding", StandardCharsets.UTF_8.name()));
        Charset charset = Charset.isSupported(encoding) ? Charset.forName(encoding) : StandardCharsets.US_ASCII;
        return new Surroundings(new PrintStream(new java.io.FileOutputStream(java.io.FileDescriptor.out), false, charset),
                new PrintStream(new java.io.FileOutputStream(java.io.FileDescriptor.err), true, charset),
                System.getenv(), System.console() != null, charset);
    }

    /** Prints text for people and sends it off. */
    void print(String text) {
        PrintWriter writer = new PrintWriter(out, false, charset);
        writer.print(text);
        writer.flush();
    }

    /** Prints for programs: always UTF-8. */
    void printUtf8(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        out.write(bytes, 0, bytes.length);
        out.flush();
    }

    boolean has(String variable) {
        return !environment.getOrDefault(variable, "").isEmpty();
    }
}
