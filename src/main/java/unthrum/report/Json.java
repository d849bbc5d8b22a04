package unthrum.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Objects, lists and plain values written as JSON: the same values always give the same bytes. */
final class Json {

    /** More figures than any measurement in a vehicle has. */
    private static final MathContext FIGURES = new MathContext(6);

    private Json() {
    }

    /** An object of the keys and values given in turn; what is empty is left away. */
    static Map<String, Object> object(Object... keysAndValues) {
        Map<String, Object> object = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            Object value = keysAndValues[i + 1] instanceof Optional<?> maybe ? maybe.orElse(null) : keysAndValues[i + 1];
            if (value != null) {
                object.put((String) keysAndValues[i], value);
            }
        }
        return object;
    }

    /** A number rounded to what can be meant; null when it is none, as JSON knows no such number. */
    static BigDecimal number(double value) {
        return Double.isFinite(value) ? new BigDecimal(value).round(FIGURES).stripTrailingZeros() : null;
    }

    /** The document, ending in a line feed. */
    static String write(Map<String, Object> document) {
        StringWriter text = new StringWriter();
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        try (JsonGenerator out = new JsonFactory().createGenerator(text)) {
            out.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(lines));
            write(document, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.append('\n').toString();
    }

    private static void write(Object value, JsonGenerator out) throws IOException {
        if (value instanceof Map<?, ?> object) {
            out.writeStartObject();
            for (Map.Entry<?, ?> entry : object.entrySet()) {
                out.writeFieldName((String) entry.getKey());
                write(entry.getValue(), out);
            }
            out.writeEndObject();
        } else if (value instanceof List<?> list) {
            out.writeStartArray();
            for (Object item : list) {
                write(item, out);
            }
            out.writeEndArray();
        } else if (value instanceof BigDecimal number) {
            out.writeNumber(number.toPlainString());
        } else if (value instanceof Integer number) {
            out.writeNumber(number);
        } else if (value instanceof Boolean flag) {
            out.writeBoolean(flag);
        } else {
            out.writeString((String) value);
        }
    }
}
