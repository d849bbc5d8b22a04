package unthrum.built;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;

/** Copies of a record with one component changed. */
public final class Edit {
    private Edit() {
    }

    public static <R extends Record> R with(R whole, String component, Object value) {
        RecordComponent[] components = whole.getClass().getRecordComponents();
        Object[] values = Arrays.stream(components).map(c -> c.getName().equals(component) ? value : of(whole, c))
                .toArray();
        if (Arrays.stream(components).noneMatch(c -> c.getName().equals(component))) {
            throw new IllegalArgumentException("no " + component + " in " + whole.getClass());
        }
        try {
            @SuppressWarnings("unchecked")
            Constructor<R> constructor = (Constructor<R>) whole.getClass().getDeclaredConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }

    /** The value of one component. */
    public static Object get(Record whole, String component) {
        return of(whole, Arrays.stream(whole.getClass().getRecordComponents())
                .filter(c -> c.getName().equals(component)).findFirst().orElseThrow());
    }

    private static Object of(Record whole, RecordComponent component) {
        try {
            return component.getAccessor().invoke(whole);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }
}
