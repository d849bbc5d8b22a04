package unthrum.reading;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import unthrum.reading.RecordShape.Field;

/** Reads single values: text, words, numbers, days, quantities and money. */
final class ScalarBinder {
    private static final Set<Class<?>> READ = Set.of(String.class, Quantity.class, Money.class, LocalDate.class,
            Boolean.class, boolean.class, Integer.class, int.class, Double.class, double.class);

    private final Places places;

    ScalarBinder(Places places) {
        this.places = places;
    }

    static boolean reads(Class<?> type) {
        return READ.contains(type) || type.isEnum();
    }

    /** The value of a single node, or null with a problem. */
    Object bind(Node node, Field field, String path) {
        Class<?> raw = RecordShape.raw(field.type());
        if (!reads(raw)) {
            throw new IllegalStateException("no reading for " + raw);
        }
        if (!(node instanceof Node.Scalar scalar)) {
            return problem(node, path, node.shown(), Expected.of(field), "");
        }
        if (raw == Quantity.class) {
            return accepted(scalar, path, Measure.of(field.measured()).read(scalar.text()));
        }
        if (raw == Money.class) {
            return accepted(scalar, path, MoneyText.read(scalar.text()));
        }
        return raw.isEnum() ? word(scalar, raw, path) : plain(scalar, raw, field, path);
    }

    /** The constant of an enum that the word names. */
    Object word(Node.Scalar scalar, Class<?> enumType, String path) {
        List<String> words = Words.all(enumType);
        int index = words.indexOf(scalar.text());
        return index >= 0 ? enumType.getEnumConstants()[index]
                : problem(scalar, path, scalar.shown(), Expected.oneOf(enumType), Nearest.remedy(scalar.text(), words));
    }

    private Object plain(Node.Scalar scalar, Class<?> raw, Field field, String path) {
        if (raw == String.class) {
            return scalar.text().isEmpty() ? problem(scalar, path, "an empty text", Expected.of(field), "")
                    : scalar.text();
        }
        Object value = parsed(scalar, raw, field.between());
        return value != null ? value : problem(scalar, path, scalar.shown(), Expected.of(field),
                remedy(scalar, raw, field.between()));
    }

    private static Object parsed(Node.Scalar scalar, Class<?> raw, Between between) {
        String text = scalar.text();
        if (raw == Boolean.class || raw == boolean.class) {
            return switch (text) {
                case "yes", "true" -> true;
                case "no", "false" -> false;
                default -> null;
            };
        }
        try {
            if (raw == LocalDate.class) {
                return LocalDate.parse(text);
            }
            if (scalar.quoted() || !NumberText.isNumber(text)) {
                return null;
            }
            if (raw == Double.class || raw == double.class) {
                double number = Double.parseDouble(text);
                return Double.isFinite(number) ? number : null;
            }
            int whole = Integer.parseInt(text);
            return between == null || whole >= between.from() && whole <= between.to() ? whole : null;
        } catch (DateTimeException | NumberFormatException e) {
            return null;
        }
    }

    private static String remedy(Node.Scalar scalar, Class<?> raw, Between between) {
        if (raw == Boolean.class || raw == boolean.class) {
            return Nearest.remedy(scalar.text(), List.of("yes", "no", "true", "false"));
        }
        if (scalar.text().indexOf(',') >= 0) {
            return Commas.remedy(scalar.text(), t -> parsed(new Node.Scalar(t, false, 0, 0), raw, between) != null);
        }
        return scalar.quoted() && NumberText.isNumber(scalar.text()) ? "take the quotes away" : "";
    }

    private Object accepted(Node.Scalar scalar, String path, Outcome outcome) {
        return outcome.value() != null ? outcome.value()
                : problem(scalar, path, outcome.found(), outcome.expected(), outcome.remedy());
    }

    private Object problem(Node node, String path, String found, String expected, String remedy) {
        places.problem(node, path, found, expected, remedy);
        return null;
    }
}
