package unthrum.reading;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import unthrum.reading.RecordShape.Field;

/** Says in words what a key wants. */
final class Expected {
    private Expected() {
    }

    static String of(Field field) {
        Class<?> raw = RecordShape.raw(field.type());
        if (raw == Optional.class) {
            return of(field.given());
        }
        if (raw == List.class) {
            Field item = field.inside(RecordShape.argument(field.type(), 0));
            return field.count() == null ? of(item) + ", or a list of such" : counted(field.count(), item);
        }
        if (raw == Map.class) {
            return "names, each with " + of(field.inside(RecordShape.argument(field.type(), 1)));
        }
        if (raw.isEnum()) {
            return oneOf(raw);
        }
        return raw.isRecord() && !ScalarBinder.reads(raw) ? record(RecordShape.of(raw)) : scalar(raw, field);
    }

    static String oneOf(Class<?> enumType) {
        return "one of " + Words.either(Words.all(enumType));
    }

    static String record(RecordShape shape) {
        String keys = (shape.keys().size() == 1 ? "the key " : "the keys ") + Words.either(shape.keys());
        return shape.wordType() == null ? keys : oneOf(shape.wordType()) + "; or " + keys;
    }

    /** The word to call a path by: its last key. */
    static String lastKey(String path) {
        String key = path.substring(path.lastIndexOf('.') + 1);
        return key.endsWith("]") ? key.substring(0, key.lastIndexOf('[')) : key;
    }

    private static String counted(Count count, Field item) {
        if (count.max() == Integer.MAX_VALUE) {
            return "at least " + count.min() + ", each " + of(item);
        }
        return (count.min() == count.max() ? "" : count.min() + " to ") + count.max() + ", each " + of(item);
    }

    private static String scalar(Class<?> raw, Field field) {
        if (raw == Quantity.class) {
            return Measure.of(field.measured()).expected();
        }
        if (raw == Money.class) {
            return MoneyText.EXPECTED;
        }
        if (raw == Boolean.class || raw == boolean.class) {
            return "yes or no";
        }
        if (raw == LocalDate.class) {
            return "a day such as 2026-01-31";
        }
        if (raw == Double.class || raw == double.class) {
            return "a number";
        }
        if (raw == String.class) {
            return "text";
        }
        Between between = field.between();
        return between == null ? "a whole number" : "a whole number from " + between.from() + " to " + between.to();
    }
}
