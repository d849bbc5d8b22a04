package unthrum.reading;

import java.util.Iterator;
import java.util.List;
import java.util.function.Supplier;

/** Texts made to exhaust a reader, and a program that reads the worst of them in the memory that it is given. */
final class Bombs {
    static final String ALIASES = "a: &a [x,x,x,x,x,x,x,x,x]\nb: &b [*a,*a,*a,*a,*a,*a,*a,*a,*a]\n"
            + "c: &c [*b,*b,*b,*b,*b,*b,*b,*b,*b]\nd: &d [*c,*c,*c,*c,*c,*c,*c,*c,*c]\n";

    private Bombs() {
    }

    static String brackets(int depth) {
        return "[".repeat(depth);
    }

    static String dashes(int depth) {
        return "- ".repeat(depth) + "x";
    }

    static String indents(int depth) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < depth; i++) {
            text.append(" ".repeat(i)).append("a:\n");
        }
        return text.toString();
    }

    static String entries(int count) {
        return "goods: [" + "a,\n".repeat(count) + "]";
    }

    /** Each close to what is let through: entries, keys, problems, long texts, open quotes, comments, depth. */
    static List<Supplier<String>> worst() {
        int size = SourceText.MAX_BYTES - 100;
        int entries = NodeTree.MAX_NODES - 10;
        return List.of(() -> "x".repeat(size), () -> lines("a,", size / 4, "goods: [", "]"),
                () -> lines("a,", entries, "goods: [", "]"), () -> lines("foam,", entries, "shelf: left\ngoods: [", "]"),
                () -> numbered(entries / 2), () -> lines("x", size / 3, "shelf:\n ", ""),
                () -> lines("x", size / 3, "shelf: '", ""), () -> lines("x", size / 3, "shelf: |\n ", ""),
                () -> lines("#", size / 3, "", ""), () -> lines("[", size / 3, "", ""),
                () -> lines("{kind: foma},", entries / 3, "goods: [", "]"), () -> "\n".repeat(size),
                () -> lines("x".repeat(9_000), 400, "shelf:\n ", ""), () -> lines("- ".repeat(29) + "x", 50_000, "", ""),
                () -> ALIASES);
    }

    private static String lines(String line, int count, String before, String after) {
        return before + (line + "\n ").repeat(count) + after + "\n";
    }

    private static String numbered(int keys) {
        StringBuilder text = new StringBuilder("shelf: left\n");
        for (int i = 0; i < keys - 2; i++) {
            text.append("boards").append(i).append(": 1\n");
        }
        return text.toString();
    }

    public static void main(String[] arguments) {
        for (Iterator<Supplier<String>> texts = worst().iterator(); texts.hasNext();) {
            long start = System.nanoTime();
            String text = Texts.problems(texts.next().get());
            System.out.println(text.lines().filter(line -> line.startsWith("shelf.yaml")).count() + " problems");
            if (arguments.length > 0) {
                System.out.println((System.nanoTime() - start) / 1_000_000 + " ms " + text.lines().findFirst().get());
            }
        }
    }
}
