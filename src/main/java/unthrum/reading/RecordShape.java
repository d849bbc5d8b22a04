package unthrum.reading;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.Optional;

/** A record type as its file writes it: the keys in order, with their types and marks. */
record RecordShape(Class<?> type, List<Field> fields, List<Method> accessors, Constructor<?> constructor) {
    private static final ClassValue<RecordShape> SHAPES = new ClassValue<>() {
        @Override
        protected RecordShape computeValue(Class<?> type) {
            return read(type);
        }
    };

    /** One key; a mark that the component does not carry is null. */
    record Field(String key, Type type, Measured measured, Between between, Count count, Says says) {
        /** The same marks for what is inside a list, a map or an optional. */
        Field inside(Type inner) {
            return new Field(key, inner, measured, between, null, says);
        }

        /** The type within Optional, the counts kept. */
        Field given() {
            return optional() ? new Field(key, argument(type, 0), measured, between, count, says) : this;
        }

        boolean optional() {
            return raw(type) == Optional.class;
        }
    }

    static RecordShape of(Class<?> type) {
        return SHAPES.get(type);
    }

    List<String> keys() {
        return fields.stream().map(Field::key).toList();
    }

    /** Whether any text may stand under the key. */
    boolean holdsText(String key) {
        return fields.stream().anyMatch(f -> f.key().equals(key) && f.given().type() == String.class);
    }

    /** The enum whose word alone may stand for the whole record, or null. */
    Class<?> wordType() {
        boolean alone = raw(fields.get(0).type()).isEnum() && fields.stream().skip(1).allMatch(Field::optional);
        return alone ? raw(fields.get(0).type()) : null;
    }

    /**
     * The record of these values; null when some are missing and its constructor needs them.
     *
     * @throws IllegalArgumentException when its constructor says that the values do not fit together
     */
    Object make(Object... values) {
        if (primitiveMissing(values)) {
            return null;
        }
        try {
            return constructor.newInstance(values);
        } catch (InvocationTargetException e) {
            if (Arrays.asList(values).contains(null)) {
                return null;
            }
            if (e.getCause() instanceof IllegalArgumentException refused) {
                throw refused;
            }
            throw new IllegalStateException(type + " cannot be made", e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(type + " cannot be made", e);
        }
    }

    private boolean primitiveMissing(Object... values) {
        Class<?>[] types = constructor.getParameterTypes();
        return IntStream.range(0, types.length).anyMatch(i -> values[i] == null && types[i].isPrimitive());
    }

    /** The values of a record of this type, in the order of the keys. */
    Object[] values(Record record) {
        Object[] values = new Object[accessors.size()];
        Arrays.setAll(values, i -> value(record, i));
        return values;
    }

    Object value(Record record, int index) {
        try {
            return accessors.get(index).invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(type + " cannot be read", e);
        }
    }

    static Class<?> raw(Type type) {
        return (Class<?>) (type instanceof ParameterizedType generic ? generic.getRawType() : type);
    }

    static Type argument(Type type, int index) {
        return ((ParameterizedType) type).getActualTypeArguments()[index];
    }

    private static RecordShape read(Class<?> type) {
        RecordComponent[] components = type.getRecordComponents();
        List<Field> fields = Arrays.stream(components).map(c -> new Field(Words.key(c.getName()),
                c.getGenericType(), c.getAnnotation(Measured.class), c.getAnnotation(Between.class),
                c.getAnnotation(Count.class), c.getAnnotation(Says.class))).toList();
        try {
            Constructor<?> constructor = type.getDeclaredConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
            constructor.setAccessible(true);
            Method[] accessors = Arrays.stream(components).map(RecordComponent::getAccessor).toArray(Method[]::new);
            Arrays.stream(accessors).forEach(a -> a.setAccessible(true));
            return new RecordShape(type, fields, List.of(accessors), constructor);
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException(e);
        }
    }
}
