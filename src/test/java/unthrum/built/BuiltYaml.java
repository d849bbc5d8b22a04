package unthrum.built;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import unthrum.reading.Dimension;
import unthrum.reading.Quantity;
import unthrum.reading.Words;

/** Writes an as-built file as a fitter would: a block for each panel, the rest on lines. */
public final class BuiltYaml {
    private BuiltYaml() {
    }

    public static String of(Built built) {
        StringBuilder text = new StringBuilder();
        for (String line : lines(built)) {
            if (!line.startsWith("panels: ")) {
                text.append(line).append('\n');
            }
        }
        text.append("panels:\n");
        for (BuiltPanel panel : built.panels()) {
            String indent = "\n  - ";
            for (String line : lines(panel)) {
                text.append(indent).append(line);
                indent = "\n    ";
            }
            text.append('\n');
        }
        return text.toString();
    }

    private static List<String> lines(Record whole) {
        List<String> lines = new ArrayList<>();
        for (RecordComponent component : whole.getClass().getRecordComponents()) {
            Object value = value(whole, component);
            if (!value.equals(Optional.empty())) {
                lines.add(Words.key(component.getName()) + ": " + text(value));
            }
        }
        return lines;
    }

    private static String text(Object value) {
        if (value instanceof Optional<?> optional) {
            return text(optional.orElseThrow());
        }
        if (value instanceof List<?> list) {
            return list.isEmpty() ? "none" : list.stream().map(BuiltYaml::text).collect(Collectors.joining(", ", "[", "]"));
        }
        if (value instanceof Quantity quantity) {
            return quantity(quantity);
        }
        if (value instanceof Record whole) {
            return "{" + String.join(", ", lines(whole)) + "}";
        }
        if (value instanceof Enum<?> word) {
            return Words.of(word);
        }
        return value instanceof Boolean flag ? (flag ? "yes" : "no") : value.toString();
    }

    private static String quantity(Quantity quantity) {
        Dimension.Unit unit = quantity.dimension().shownIn();
        String number = String.format(Locale.ROOT, "%.3f", unit.fromSi(quantity.si())).replaceAll("\\.?0+$", "");
        return (number.isEmpty() ? "0" : number) + " " + unit.symbol();
    }

    private static Object value(Record whole, RecordComponent component) {
        try {
            return component.getAccessor().invoke(whole);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }
}
