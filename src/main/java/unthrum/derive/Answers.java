package unthrum.derive;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import unthrum.knowledge.Assumption;
import unthrum.knowledge.Knowledge;
import unthrum.reading.Quantity;
import unthrum.reading.Words;
import unthrum.survey.Zone;

/**
 * Answers each question about one fact record: what was stated, or else the cautious assumption, and remembers which
 * components were assumed.
 */
final class Answers {

    private final Knowledge knowledge;
    private final Zone zone;
    private final Map<String, Assumed> taken;
    private final Set<String> assumed = new LinkedHashSet<>();

    /** @param taken collects every assumption taken, by the survey's key */
    Answers(Knowledge knowledge, Zone zone, Map<String, Assumed> taken) {
        this.knowledge = knowledge;
        this.zone = zone;
        this.taken = taken;
    }

    /** The components that were assumed. */
    Set<String> assumed() {
        return Set.copyOf(assumed);
    }

    /** Notes that a list was left open: nothing is known to be there. */
    void list(Optional<? extends List<?>> stated, String component, String key) {
        if (stated.isEmpty()) {
            assume(component, key);
        }
    }

    double quantity(Optional<Quantity> stated, String component) {
        return quantity(stated, component, Words.key(component));
    }

    /** @param key the survey's key, where it differs from the component's name */
    double quantity(Optional<Quantity> stated, String component, String key) {
        return stated.map(Quantity::si).orElseGet(() -> Quantity.of(assume(component, key)).si());
    }

    <E extends Enum<E>> E word(Optional<E> stated, Class<E> type, String component) {
        return word(stated, type, component, Words.key(component));
    }

    <E extends Enum<E>> E word(Optional<E> stated, Class<E> type, String component, String key) {
        return stated.orElseGet(() -> constant(type, assume(component, key)));
    }

    boolean flag(Optional<Boolean> stated, String component) {
        return flag(stated, component, Words.key(component));
    }

    boolean flag(Optional<Boolean> stated, String component, String key) {
        return stated.orElseGet(() -> assume(component, key).equals("yes"));
    }

    int count(Optional<Integer> stated, String component, String key) {
        return stated.orElseGet(() -> Integer.parseInt(assume(component, key)));
    }

    private String assume(String component, String key) {
        Assumption assumption = knowledge.assumption(key, zone).orElseThrow(
                () -> new IllegalStateException("no assumption for '" + key + "' in zone " + zone));
        assumed.add(component);
        taken.putIfAbsent(key, new Assumed(key, assumption.value(), assumption.because(), assumption.source()));
        return assumption.value();
    }

    private static <E extends Enum<E>> E constant(Class<E> type, String word) {
        for (E constant : type.getEnumConstants()) {
            if (Words.of(constant).equals(word)) {
                return constant;
            }
        }
        throw new IllegalStateException("the assumption '" + word + "' is no " + type.getSimpleName());
    }
}
