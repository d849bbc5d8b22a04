package unthrum.reading;

import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import unthrum.reading.RecordShape.Field;

/**
 * Binds nodes to the types of a record. A value that cannot be bound is reported and becomes null (an optional one
 * becomes empty), so that the rest of the file is read and checked too.
 */
final class Binder {
    static final String UNKNOWN = "unknown";
    static final String NONE = "none";

    /** Ways of saying 'none' that are not ours. */
    private static final Set<String> NOTHING = Set.of("no", "No", "nothing", "nil", "false", "0", "-");

    private final Places places;

    Binder(Places places) {
        this.places = places;
    }

    /** The record that a node stands for, or null. */
    Object record(Node node, Class<?> type, String path) {
        places.put(path, node);
        RecordShape shape = RecordShape.of(type);
        if (node instanceof Node.Mapping mapping) {
            return filled(mapping, shape, path);
        }
        if (node instanceof Node.Scalar word && shape.wordType() != null && !word.nothing()) {
            Object constant = new ScalarBinder(places).word(word, shape.wordType(), path);
            Object[] values = new Object[shape.fields().size()];
            Arrays.fill(values, Optional.empty());
            values[0] = constant;
            return constant == null ? null : made(node, shape, values, path);
        }
        places.problem(node, path, node.shown(), Expected.record(shape), "");
        return null;
    }

    private Object filled(Node.Mapping written, RecordShape shape, String path) {
        Node.Mapping mapping = Commas.joined(written, shape::holdsText);
        Map<String, Node> given = keyed(mapping, path);
        List<String> keys = shape.keys();
        Set<String> misspelt = new HashSet<>();
        for (Node.Entry entry : mapping.entries()) {
            if (entry.key() instanceof Node.Scalar key && !key.nothing() && !keys.contains(key.text())) {
                misspelt.addAll(unknownKey(key, keys, path));
            }
        }
        Object[] values = new Object[keys.size()];
        for (int i = 0; i < values.length; i++) {
            Field field = shape.fields().get(i);
            Node node = given.get(field.key());
            values[i] = node != null ? value(node, field, inside(path, field.key()))
                    : absent(mapping, field, path, misspelt.contains(field.key()));
        }
        return made(mapping, shape, values, path);
    }

    private Object made(Node node, RecordShape shape, Object[] values, String path) {
        try {
            return shape.make(values);
        } catch (IllegalArgumentException e) {
            places.problem(node, path, e.getMessage(), "values that fit together", "");
            return null;
        }
    }

    /** The keys that were probably meant. */
    private List<String> unknownKey(Node.Scalar key, List<String> keys, String path) {
        List<String> meant = Nearest.meant(key.text(), keys);
        places.problem(key, path, "unknown key " + key.shown(),
                meant.isEmpty() ? "one of the keys " + Words.either(keys) : "a known key", Nearest.remedy(key.text(), keys));
        return meant;
    }

    private Object absent(Node.Mapping mapping, Field field, String path, boolean misspelt) {
        String inner = inside(path, field.key());
        if (misspelt) {
            places.faulty(inner);
        }
        if (field.optional() || misspelt) {
            return field.optional() ? Optional.empty() : null;
        }
        String where = path.isEmpty() ? "this file" : "'" + Expected.lastKey(path) + "'";
        places.problem(mapping, inner, "no '" + field.key() + "' in " + where, Expected.of(field), "add the key");
        return null;
    }

    /** The entries of a mapping by key; a key that is no word or stands there twice is reported. */
    private Map<String, Node> keyed(Node.Mapping mapping, String path) {
        Map<String, Node> values = new LinkedHashMap<>();
        Map<String, Node> first = new LinkedHashMap<>();
        for (Node.Entry entry : mapping.entries()) {
            if (!(entry.key() instanceof Node.Scalar key) || key.nothing()) {
                places.problem(entry.key(), path, entry.key().shown() + " in place of a key", "a word before the colon",
                        "put text that holds brackets in quotes");
                continue;
            }
            Node earlier = first.putIfAbsent(key.text(), key);
            if (earlier == null) {
                values.put(key.text(), entry.value());
            } else {
                places.problem(key, path, "the key " + key.shown() + " a second time (first in line "
                        + earlier.line() + ")", "each key once", "delete one of the two");
            }
        }
        return values;
    }

    private Object value(Node node, Field field, String path) {
        places.put(path, node);
        Type type = field.type();
        Class<?> raw = RecordShape.raw(type);
        boolean scalar = node instanceof Node.Scalar;
        if (raw == Optional.class) {
            boolean unknown = scalar && ((Node.Scalar) node).text().equals(UNKNOWN);
            return unknown ? Optional.empty() : Optional.ofNullable(value(node, field.given(), path));
        }
        if (scalar && ((Node.Scalar) node).nothing()) {
            places.problem(node, path, "nothing after '" + Expected.lastKey(path) + ":'", Expected.of(field),
                    "write the value, or 'unknown' where a key may be left out");
            return null;
        }
        if (raw == List.class) {
            return list(node, field, path);
        }
        if (raw == Map.class) {
            return map(node, field, path);
        }
        return raw.isRecord() && !ScalarBinder.reads(raw)
                ? record(node, raw, path)
                : new ScalarBinder(places).bind(node, field, path);
    }

    private List<?> list(Node node, Field field, String path) {
        List<Object> values = new ArrayList<>();
        Field item = field.inside(RecordShape.argument(field.type(), 0));
        if (node instanceof Node.Sequence sequence) {
            for (Node entry : entries(sequence, field, item)) {
                values.add(value(entry, item, path + "[" + values.size() + "]"));
            }
        } else if (node instanceof Node.Scalar scalar && NOTHING.contains(scalar.text())) {
            places.problem(node, path, scalar.shown(), "a list, or 'none'", "write 'none' where there is none");
        } else if (!(node instanceof Node.Scalar scalar)) {
            values.add(value(node, item, path + "[0]"));
        } else if (!scalar.text().equals(NONE)) {
            Unlisted text = new Unlisted(scalar, field, item);
            if (text.isWrong()) {
                places.problem(node, path, text.found(), text.expected(), text.remedy());
                return List.of();
            }
            values.add(value(node, item, path + "[0]"));
        }
        Count count = field.count();
        if (count != null && (values.size() < count.min() || values.size() > count.max())) {
            places.problem(node, path, values.size() + (values.size() == 1 ? " entry" : " entries") + " in '"
                    + Expected.lastKey(path) + "'", Expected.of(field), values.size() > count.max()
                    ? "a comma parts two entries; decimals have a point" : "");
        }
        return Collections.unmodifiableList(values);
    }

    /** Two numbers without a space between are one with a decimal comma where there are too many. */
    private static List<Node> entries(Node.Sequence sequence, Field list, Field item) {
        boolean quantities = item.measured() != null && item.measured().value() != Dimension.NUMBER;
        boolean fit = list.count() != null && sequence.items().size() <= list.count().max();
        return quantities && !fit ? Commas.joined(sequence.items()) : sequence.items();
    }

    private Map<String, ?> map(Node node, Field field, String path) {
        if (!(node instanceof Node.Mapping written)) {
            places.problem(node, path, node.shown(), Expected.of(field), "");
            return null;
        }
        Field item = field.inside(RecordShape.argument(field.type(), 1));
        Node.Mapping mapping = Commas.joined(written, key -> item.type() == String.class);
        Map<String, Object> values = new LinkedHashMap<>();
        keyed(mapping, path).forEach((key, value) -> values.put(key, value(value, item, inside(path, key))));
        return Collections.unmodifiableMap(values);
    }

    private static String inside(String path, String key) {
        return path.isEmpty() ? key : path + "." + key;
    }
}
