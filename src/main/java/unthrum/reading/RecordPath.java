package unthrum.reading;

import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import unthrum.reading.RecordShape.Field;

/**
 * The way to one value inside a record, in the keys of its file: {@code heat.peak}, {@code tap[1]}. Reads the value,
 * makes a copy of the record with another one, and reads a written value as the file's reader would.
 */
public final class RecordPath {
    private final List<Step> steps;
    private final Field field;
    private final String text;

    private record Step(RecordShape shape, int index, int item) {
    }

    private RecordPath(String text, List<Step> steps, Field field) {
        this.text = text;
        this.steps = steps;
        this.field = field;
    }

    /** @throws IllegalArgumentException when the record has no such way */
    public static RecordPath of(Class<? extends Record> type, String text) {
        List<Step> steps = new ArrayList<>();
        Class<?> at = type;
        Field field = null;
        for (String key : text.split("\\.")) {
            RecordShape shape = RecordShape.of(at);
            int bracket = key.indexOf('[');
            int index = shape.keys().indexOf(bracket < 0 ? key : key.substring(0, bracket));
            if (index < 0) {
                throw new IllegalArgumentException("no '" + key + "' in " + at.getSimpleName());
            }
            int item = bracket < 0 ? -1 : Integer.parseInt(key.substring(bracket + 1, key.length() - 1));
            steps.add(new Step(shape, index, item));
            field = shape.fields().get(index).given();
            Type inner = field.type();
            if (item >= 0) {
                field = field.inside(RecordShape.argument(inner, 0));
            }
            at = RecordShape.raw(field.type());
        }
        return new RecordPath(text, steps, field);
    }

    /** The value, if it was given. */
    public Optional<Object> in(Record whole) {
        Object value = whole;
        for (Step step : steps) {
            value = given(step.shape.value((Record) value, step.index));
            if (step.item >= 0 && value instanceof List<?> list) {
                value = step.item < list.size() ? list.get(step.item) : null;
            }
            if (value == null) {
                return Optional.empty();
            }
        }
        return Optional.of(value);
    }

    /** A copy with the value there, or with nothing where it is null; every block around it must have been given. */
    public <T extends Record> T with(T whole, Object value) {
        @SuppressWarnings("unchecked")
        T copy = (T) with(whole, 0, value);
        return copy;
    }

    /** The enum whose words may stand there, if it is one. */
    public Optional<Class<?>> words() {
        Class<?> raw = RecordShape.raw(field.type());
        return raw.isEnum() ? Optional.of(raw) : Optional.empty();
    }

    /** The dimension of the quantity that may stand there, if it is one. */
    public Optional<Dimension> dimension() {
        return Optional.ofNullable(field.measured()).map(Measured::value);
    }

    /**
     * The value that a text writes, by the rules of the file's reader.
     *
     * @param place what to call the place of the text in a problem
     * @throws Problems when the text is no such value
     */
    public Object read(String place, String written) {
        Places places = new Places(place);
        Node.Scalar node = new Node.Scalar(written, false, 0, 0);
        places.put("", node);
        Object value = new ScalarBinder(places).bind(node, field, text);
        if (value == null) {
            throw new Problems(places.problems());
        }
        return value;
    }

    @Override
    public String toString() {
        return text;
    }

    private Record with(Record record, int depth, Object value) {
        Step step = steps.get(depth);
        Object[] components = step.shape.values(record);
        Object before = components[step.index];
        Object inner = given(before);
        boolean last = depth == steps.size() - 1;
        Object after;
        if (step.item >= 0) {
            List<Object> list = new ArrayList<>((List<?>) inner);
            list.set(step.item, last ? value : with((Record) list.get(step.item), depth + 1, value));
            after = List.copyOf(list);
        } else {
            after = last ? value : with((Record) inner, depth + 1, value);
        }
        components[step.index] = before instanceof Optional ? Optional.ofNullable(after) : after;
        return (Record) step.shape.make(components);
    }

    private static Object given(Object value) {
        return value instanceof Optional<?> optional ? optional.orElse(null) : value;
    }
}
