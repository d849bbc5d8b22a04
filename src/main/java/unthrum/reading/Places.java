package unthrum.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Where every value of a file stands, by its path ({@code panels[3].ribs[0].at}, keys as in the file, entries counted
 * from 0), and the problems found so far.
 */
public final class Places {
    /** With more the file is of another kind, and the reading stops. */
    static final int MAX_PROBLEMS = 1000;

    private final String file;
    private final Map<String, Node> nodes = new HashMap<>();
    private final Set<String> faulty = new HashSet<>();
    private final List<Problem> problems = new ArrayList<>();

    Places(String file) {
        this.file = file;
    }

    /** The line of the value at the path, or of the block around it when the value is not given. */
    public int line(String path) {
        return node(path).line();
    }

    /** Whether nothing is wrong with the value at the path or anything inside it. */
    public boolean sound(String path) {
        return !faulty.contains(path);
    }

    /** The record at the path as if those of its optional parts that are not sound were not given. */
    @SuppressWarnings("unchecked")
    public <R extends Record> R soundParts(R record, String path) {
        RecordShape shape = RecordShape.of(record.getClass());
        Object[] values = shape.values(record);
        for (int i = 0; i < values.length; i++) {
            RecordShape.Field field = shape.fields().get(i);
            if (field.optional() && !sound(path + "." + field.key())) {
                values[i] = Optional.empty();
            }
        }
        return (R) shape.make(values);
    }

    /** Reports a problem with the value at the path. */
    public void problem(String path, String found, String expected, String remedy) {
        problem(node(path), path, found, expected, remedy);
    }

    void problem(Node where, String path, String found, String expected, String remedy) {
        if (problems.size() == MAX_PROBLEMS) {
            problems.add(Problem.ofFile(file, "more than " + MAX_PROBLEMS + " problems", "a file of this kind",
                    "check that this is the right file"));
            throw new Problems(problems);
        }
        problems.add(new Problem(file, where.line(), where.column(), found, expected, remedy));
        faulty(path);
    }

    /** Nothing at the path, nor any block around it, can be relied on. */
    void faulty(String path) {
        String p = path;
        while (faulty.add(p) && !p.isEmpty()) {
            p = outer(p);
        }
    }

    void put(String path, Node node) {
        nodes.put(path, node);
    }

    List<Problem> problems() {
        return problems;
    }

    private Node node(String path) {
        String p = path;
        while (!nodes.containsKey(p) && !p.isEmpty()) {
            p = outer(p);
        }
        return nodes.get(p);
    }

    private static String outer(String path) {
        return path.substring(0, Math.max(0, Math.max(path.lastIndexOf('.'), path.lastIndexOf('['))));
    }
}
