package unthrum.compare;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import unthrum.reading.Words;

/** A key of the survey that differs, with what each side says; 'unknown' where one says nothing. */
public record FactChange(String key, String before, String after) {
    private static final String UNKNOWN = "unknown";

    /** The differing keys of two records of one kind, those of blocks within them by their path. */
    static List<FactChange> between(Record before, Record after) {
        List<FactChange> changes = new ArrayList<>();
        add("", before, after, changes);
        return changes;
    }

    private static void add(String path, Record before, Record after, List<FactChange> changes) {
        for (RecordComponent component : before.getClass().getRecordComponents()) {
            Object a = plain(before, component);
            Object b = plain(after, component);
            String key = path + Words.key(component.getName());
            if (a instanceof Record x && b instanceof Record y && x.getClass() == y.getClass()
                    && isBlock(x) && !x.equals(y)) {
                add(key + ".", x, y, changes);
            } else if (a == null ? b != null : !a.equals(b)) {
                changes.add(new FactChange(key, say(a), say(b)));
            }
        }
    }

    /** Quantities and money are values, though they are records too. */
    private static boolean isBlock(Record value) {
        return value.getClass().getPackageName().endsWith(".survey");
    }

    private static Object plain(Record owner, RecordComponent component) {
        try {
            Object value = component.getAccessor().invoke(owner);
            return value instanceof Optional<?> optional ? optional.orElse(null) : value;
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot read " + component, e);
        }
    }

    private static String say(Object value) {
        if (value == null) {
            return UNKNOWN;
        }
        if (value instanceof List<?> list) {
            return list.isEmpty() ? "none" : list.stream().map(FactChange::say).collect(Collectors.joining(", "));
        }
        if (value instanceof Enum<?> word) {
            return Words.of(word);
        }
        if (value instanceof Boolean flag) {
            return flag ? "yes" : "no";
        }
        return value instanceof Record whole && isBlock(whole) ? block(whole) : value.toString();
    }

    private static String block(Record whole) {
        List<String> parts = new ArrayList<>();
        for (RecordComponent component : whole.getClass().getRecordComponents()) {
            Object value = plain(whole, component);
            if (value != null) {
                parts.add(Words.key(component.getName()) + " " + say(value));
            }
        }
        return "(" + String.join(", ", parts) + ")";
    }
}
