package unthrum.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import unthrum.compare.EffectChange;
import unthrum.compare.EffectChange.Kind;
import unthrum.reading.Dimension;

/** Effects that differ, a line for each kind; what differs by less than is shown is left away. */
final class EffectChangeText {

    private final List<EffectChange> changes;

    EffectChangeText(List<EffectChange> changes) {
        this.changes = changes;
    }

    List<String> lines() {
        Map<Kind, List<EffectChange>> byKind = changes.stream()
                .filter(c -> !shown(c.kind(), c.before()).equals(shown(c.kind(), c.after())))
                .collect(Collectors.groupingBy(EffectChange::kind, LinkedHashMap::new, Collectors.toList()));
        return byKind.entrySet().stream().map(e -> English.sentence(e.getKey().words() + ": "
                + e.getValue().stream().map(EffectChangeText::numbers).collect(Collectors.joining("; ")))).toList();
    }

    private static String numbers(EffectChange change) {
        return (change.at().isEmpty() ? "" : change.at() + " ") + shown(change.kind(), change.before()) + ", now "
                + shown(change.kind(), change.after());
    }

    private static String shown(Kind kind, OptionalDouble value) {
        if (value.isEmpty()) {
            return "no number";
        }
        return kind.dimension() == Dimension.LEVEL || kind.dimension() == Dimension.NUMBER
                ? Math.round(value.getAsDouble()) + " " + kind.unit()
                : Amounts.quantity(value.getAsDouble(), kind.dimension());
    }
}
