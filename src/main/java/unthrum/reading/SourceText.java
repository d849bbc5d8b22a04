package unthrum.reading;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.yaml.snakeyaml.reader.StreamReader;

/** The text of a file, or the one problem that keeps it from being a text. */
final class SourceText {
    /** Far above any file made by hand: a surveyed panel takes about one kilobyte. */
    static final int MAX_BYTES = 4 * 1024 * 1024;

    /** Longer lines are not made by hand, and the parser's time grows with their square. */
    static final int MAX_LINE = 10_000;

    private SourceText() {
    }

    static String of(Path file) {
        String name = file.toString();
        if (Files.isDirectory(file)) {
            throw new Problems(Problem.ofFile(name, "this is a folder", "a file", "name one file inside it"));
        }
        try (InputStream in = Files.newInputStream(file)) {
            return of(name, in);
        } catch (IOException e) {
            throw new Problems(unreadable(name, e));
        }
    }

    static String of(String name, InputStream in) {
        byte[] bytes;
        try {
            bytes = in.readNBytes(MAX_BYTES + 1);
        } catch (IOException e) {
            throw new Problems(unreadable(name, e));
        }
        if (bytes.length > MAX_BYTES) {
            throw new Problems(Problem.ofFile(name, "more than " + MAX_BYTES / 1024 / 1024 + " MB",
                    "a text written by hand", "check that this is the right file, or split it"));
        }
        return decoded(name, bytes);
    }

    private static Problem unreadable(String name, IOException e) {
        if (e instanceof NoSuchFileException) {
            return Problem.ofFile(name, "there is no such file", "an existing file",
                    "check the folder and the spelling");
        }
        if (e instanceof AccessDeniedException) {
            return Problem.ofFile(name, "you may not read this file", "a file with read permission",
                    "ask its owner for the permission to read it");
        }
        return Problem.ofFile(name, "the file cannot be read to its end", "a readable file",
                "copy it to another disk and try again");
    }

    private static String decoded(String name, byte[] bytes) {
        if (startsWith(bytes, 0xFF, 0xFE) || startsWith(bytes, 0xFE, 0xFF)) {
            throw new Problems(new Problem(name, 1, 1, "text in the encoding UTF-16", "text in UTF-8",
                    "save it again as UTF-8"));
        }
        int start = startsWith(bytes, 0xEF, 0xBB, 0xBF) ? 3 : 0;
        ByteBuffer in = ByteBuffer.wrap(bytes, start, bytes.length - start);
        CharBuffer out = CharBuffer.allocate(bytes.length - start + 1);
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        CoderResult result = decoder.decode(in, out, true);
        String text = out.flip().toString();
        int control = firstControl(text);
        if (control >= 0) {
            throw new Problems(controlAt(name, text, control));
        }
        if (result.isError()) {
            String found = String.format("a byte that is not UTF-8 (0x%02X)", bytes[in.position()]);
            throw new Problems(at(name, text, text.length(), found, "text in UTF-8", "save it again as UTF-8"));
        }
        refuseLongLine(name, text);
        return text;
    }

    private static void refuseLongLine(String name, String text) {
        for (int start = 0, end; start < text.length(); start = end + 1) {
            int next = text.indexOf('\n', start);
            end = next < 0 ? text.length() : next;
            if (end - start > MAX_LINE) {
                throw new Problems(at(name, text, start, "a line of " + (end - start) + " characters",
                        "a text written by hand", "break the line"));
            }
        }
    }

    private static boolean startsWith(byte[] bytes, int... mark) {
        for (int i = 0; i < mark.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    private static int firstControl(String text) {
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            if (!StreamReader.isPrintable(text.codePointAt(i))) {
                return i;
            }
        }
        return -1;
    }

    private static Problem controlAt(String name, String text, int index) {
        int found = text.codePointAt(index);
        if (found == 0) {
            return at(name, text, index, "a binary file", "a text", "check that this is the right file");
        }
        return at(name, text, index, String.format("the control character U+%04X", found), "printable text",
                "delete that character");
    }

    private static Problem at(String name, String text, int index, String found, String expected, String remedy) {
        String before = text.substring(0, index);
        int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
        int column = index - before.lastIndexOf('\n');
        return new Problem(name, line, column, found, expected, remedy);
    }
}
