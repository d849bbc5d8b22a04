package unthrum.report;

import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import unthrum.effect.AimGain;
import unthrum.effect.Range;
import unthrum.facts.Place;
import unthrum.material.Material;
import unthrum.physics.Band;
import unthrum.physics.Estimate;
import unthrum.physics.ThirdOctave;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;
import unthrum.reading.Words;

/**
 * Records of computed values as JSON objects, component by component. A measured one becomes a quantity with its unit,
 * an estimate its value or the reason why there is none.
 */
final class RecordJson {

    private RecordJson() {
    }

    static Map<String, Object> object(Record values) {
        Map<String, Object> object = new LinkedHashMap<>();
        if (values instanceof AimGain.Gain) {
            object.put("kind", Words.key(values.getClass().getSimpleName()).strip().toLowerCase(Locale.ROOT));
        }
        for (RecordComponent component : values.getClass().getRecordComponents()) {
            Object value = value(read(component, values), Optional.ofNullable(component.getAnnotation(Measured.class))
                    .map(Measured::value).orElse(Dimension.NUMBER));
            if (value != null) {
                object.put(component.getName(), value);
            }
        }
        return object;
    }

    private static Object read(RecordComponent component, Record values) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot read " + component, e);
        }
    }

    private static Object value(Object value, Dimension dimension) {
        if (value instanceof Optional<?> maybe) {
            return maybe.map(v -> value(v, dimension)).orElse(null);
        }
        if (value instanceof OptionalDouble maybe) {
            return maybe.isPresent() ? JsonValues.quantity(maybe.getAsDouble(), dimension) : null;
        }
        if (value instanceof List<?> list) {
            return list.stream().map(v -> value(v, dimension)).toList();
        }
        if (value instanceof Estimate<?> estimate) {
            return estimate.isWithin() ? value(estimate.value(), dimension)
                    : Json.object("outsideItsRange", estimate.reason());
        }
        return value instanceof Double number ? JsonValues.quantity(number, dimension) : whole(value, dimension);
    }

    private static Object whole(Object value, Dimension dimension) {
        if (value instanceof Range range) {
            return range(range.low(), range.about(), range.high(), dimension);
        }
        if (value instanceof Band band) {
            return range(band.lower(), Double.NaN, band.upper(), Dimension.FREQUENCY);
        }
        if (value instanceof ThirdOctave octave) {
            return JsonValues.quantity(octave.nominal(), Dimension.FREQUENCY);
        }
        if (value instanceof Place place) {
            return JsonValues.place(place);
        }
        if (value instanceof Material material) {
            return material.material();
        }
        if (value instanceof Enum<?> word) {
            return Words.of(word);
        }
        return value instanceof Record record ? object(record) : value;
    }

    /** @param about NaN where no middle is known */
    private static Map<String, Object> range(double low, double about, double high, Dimension dimension) {
        var unit = dimension.shownIn();
        return Json.object("low", Json.number(unit.fromSi(low)), "about", Json.number(unit.fromSi(about)),
                "high", Json.number(unit.fromSi(high)), "unit", unit.symbol().isEmpty() ? null : unit.symbol());
    }
}
