package unthrum.compare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import unthrum.reading.Dimension;

/**
 * An effect that differs between two sides.
 *
 * @param at     the bay or the band that it belongs to; empty when it belongs to the whole
 * @param before SI; empty where no number can be told
 */
public record EffectChange(Kind kind, String at, OptionalDouble before, OptionalDouble after) {

    /** Differences below this come from rounding alone. */
    private static final double ROUNDING = 1e-9;

    /** Effects that are a number, with what the number tells. Watts have no unit of the survey file. */
    public enum Kind {
        /** By how much a bay is quieter at its own note, in the workshop's warmth. */
        QUIETER_BAY("quieter at the own note by", Dimension.LEVEL, "dB"),
        HELD_BACK("sound held back", Dimension.LEVEL, "dB"),
        HEAT_IN("heat coming in", Dimension.HEAT_FLOW, "W/m2"),
        HEAT_LOST("heat lost in winter", Dimension.HEAT_FLOW, "W/m2"),
        CAN_GET_WET("share that can get wet", Dimension.SHARE, "%"),
        /** The share of what the bare vehicle gives off for an aim. */
        TAKEN("the layers take", Dimension.SHARE, "%"),
        HEAT_THROUGH("heat through the panels", Dimension.NUMBER, "W"),
        WET_AREA("area that can get wet", Dimension.AREA, "m2");

        private final String words;
        private final Dimension dimension;
        private final String unit;

        Kind(String words, Dimension dimension, String unit) {
            this.words = words;
            this.dimension = dimension;
            this.unit = unit;
        }

        public String words() {
            return words;
        }

        public Dimension dimension() {
            return dimension;
        }

        public String unit() {
            return unit;
        }
    }

    /** A kind of effect and what it belongs to. */
    record Key(Kind kind, String at) {
    }

    static List<EffectChange> between(Map<Key, Double> before, Map<Key, Double> after) {
        Set<Key> keys = new LinkedHashSet<>(before.keySet());
        keys.addAll(after.keySet());
        List<EffectChange> changes = new ArrayList<>();
        for (Key key : keys) {
            OptionalDouble a = number(before, key);
            OptionalDouble b = number(after, key);
            boolean alike = a.isPresent() && b.isPresent()
                    && Math.abs(a.getAsDouble() - b.getAsDouble()) <= ROUNDING;
            if (!alike) {
                changes.add(new EffectChange(key.kind(), key.at(), a, b));
            }
        }
        return changes;
    }

    private static OptionalDouble number(Map<Key, Double> numbers, Key key) {
        return numbers.containsKey(key) ? OptionalDouble.of(numbers.get(key)) : OptionalDouble.empty();
    }
}
