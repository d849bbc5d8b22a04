package unthrum.reading;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import unthrum.reading.Dimension.Unit;
import unthrum.reading.RecordShape.Field;

/** The forms in which a schema accepts a single value. */
final class ScalarSchema {
    private ScalarSchema() {
    }

    static List<ObjectNode> of(Class<?> raw, Field field) {
        if (raw == Quantity.class) {
            return quantity(Measure.of(field.measured()));
        }
        if (raw == Money.class) {
            return List.of(pattern("^" + NumberText.pattern(false) + " *[A-Z]{3}$"));
        }
        if (raw == Boolean.class || raw == boolean.class) {
            ObjectNode either = form();
            either.putArray("enum").add("yes").add("no").add(true).add(false);
            return List.of(either);
        }
        if (raw == LocalDate.class) {
            return List.of(pattern("^[0-9]{4}-[0-9]{2}-[0-9]{2}$"));
        }
        if (raw == String.class) {
            ObjectNode text = form();
            text.putArray("type").add("string").add("number").add("boolean");
            return List.of(text.put("minLength", 1));
        }
        return List.of(raw == Double.class || raw == double.class ? form().put("type", "number")
                : whole(field.between()));
    }

    private static ObjectNode whole(Between between) {
        ObjectNode whole = form().put("type", "integer");
        return between == null ? whole : whole.put("minimum", between.from()).put("maximum", between.to());
    }

    private static List<ObjectNode> quantity(Measure measure) {
        List<Unit> units = measure.dimension() != null ? measure.dimension().units()
                : Arrays.stream(Dimension.values()).flatMap(d -> d.units().stream()).toList();
        String symbols = units.stream().flatMap(u -> Stream.of(u.symbol(), u.printed())).distinct()
                .filter(s -> !s.isEmpty()).map(ScalarSchema::literal).collect(Collectors.joining("|"));
        ObjectNode written = pattern("^" + NumberText.pattern(measure.mayBeNegative()) + " *(" + symbols + ")$");
        if (units.stream().noneMatch(u -> u.symbol().isEmpty())) {
            return List.of(written);
        }
        return symbols.isEmpty() ? List.of(form().put("type", "number"))
                : List.of(written, form().put("type", "number"));
    }

    private static String literal(String symbol) {
        return Pattern.compile("[.^$*+?()\\[\\]{}|\\\\]").matcher(symbol).replaceAll("\\\\$0");
    }

    private static ObjectNode pattern(String regex) {
        return form().put("type", "string").put("pattern", regex);
    }

    private static ObjectNode form() {
        return JsonNodeFactory.instance.objectNode();
    }
}
