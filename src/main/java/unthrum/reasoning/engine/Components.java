package unthrum.reasoning.engine;

import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;

/** Looks into facts by the names of their components, as a rule's text names them. */
public final class Components {

    private static final Map<Class<?>, Map<String, RecordComponent>> KNOWN = new ConcurrentHashMap<>();
    /** Components that only join a fact to its panel or carry marks: nothing to show a reader. */
    private static final Set<String> PLUMBING = Set.of("panel", "name", "number", "assumed", "place");

    private Components() {
    }

    /** Whether the component exists and says something of its own. */
    public static boolean has(Object fact, String component) {
        return has(fact.getClass(), component);
    }

    static boolean has(Class<?> kind, String component) {
        return !PLUMBING.contains(component) && of(kind).containsKey(component);
    }

    /** The value of a component. */
    public static Object value(Object fact, String component) {
        try {
            return of(fact.getClass()).get(component).getAccessor().invoke(fact);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot read " + component + " of " + fact, e);
        }
    }

    /** The kind of quantity that a numeric component holds. */
    public static Optional<Dimension> dimension(Class<?> type, String component) {
        return Optional.ofNullable(of(type).get(component))
                .map(c -> c.getAnnotation(Measured.class)).map(Measured::value);
    }

    private static Map<String, RecordComponent> of(Class<?> type) {
        return KNOWN.computeIfAbsent(type, t -> {
            Map<String, RecordComponent> components = new LinkedHashMap<>();
            if (t.isRecord()) {
                for (RecordComponent c : t.getRecordComponents()) {
                    components.put(c.getName(), c);
                }
            }
            return components;
        });
    }
}
