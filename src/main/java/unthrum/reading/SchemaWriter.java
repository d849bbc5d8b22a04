package unthrum.reading;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import unthrum.reading.RecordShape.Field;

/**
 * Writes the JSON Schema (draft 2020-12) of the files that {@link YamlReader} reads into a record, so that an editor
 * completes and checks them. It accepts all that the reader accepts; ranges of quantities, which stand in text with
 * their units, are only described.
 */
public final class SchemaWriter {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final ObjectNode definitions = JSON.createObjectNode();
    private final Map<String, Class<?>> named = new HashMap<>();

    private SchemaWriter() {
    }

    /** The schema as text, two spaces an indent. */
    public static String of(Class<? extends Record> type) {
        SchemaWriter writer = new SchemaWriter();
        ObjectNode schema = JSON.createObjectNode();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        Says says = type.getAnnotation(Says.class);
        schema.put("title", says == null ? Words.key(type.getSimpleName()).strip() : says.value());
        schema.setAll(writer.block(RecordShape.of(type)));
        schema.set("$defs", writer.definitions);
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter().withObjectIndenter(indent);
        try {
            return JSON.writer(printer).writeValueAsString(schema) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    /** What may stand at one place: some words, or one of several forms. */
    private record Choice(List<String> words, List<ObjectNode> forms) {
        static Choice of(ObjectNode form) {
            return new Choice(List.of(), List.of(form));
        }

        Choice or(String word) {
            List<String> more = new ArrayList<>(words);
            more.add(word);
            return new Choice(more, forms);
        }

        Choice or(ObjectNode form) {
            List<ObjectNode> more = new ArrayList<>(forms);
            more.add(form);
            return new Choice(words, more);
        }

        ObjectNode schema() {
            List<ObjectNode> all = new ArrayList<>(forms);
            if (!words.isEmpty()) {
                ObjectNode oneWord = JSON.createObjectNode();
                words.forEach(oneWord.putArray("enum")::add);
                all.add(0, oneWord);
            }
            ObjectNode any = JSON.createObjectNode();
            any.putArray("anyOf").addAll(all);
            return all.size() == 1 ? all.get(0) : any;
        }
    }

    private ObjectNode block(RecordShape shape) {
        ObjectNode block = JSON.createObjectNode();
        block.put("type", "object").put("additionalProperties", false);
        ArrayNode required = JSON.createArrayNode();
        ObjectNode properties = block.putObject("properties");
        for (Field field : shape.fields()) {
            ObjectNode property = JSON.createObjectNode();
            description(field).ifPresent(text -> property.put("description", text));
            property.setAll(choice(field).schema());
            properties.set(field.key(), property);
            if (!field.optional()) {
                required.add(field.key());
            }
        }
        block.set("required", required);
        return block;
    }

    /** The marked sentence, and for numbers what is expected: words and keys speak for themselves. */
    private static Optional<String> description(Field field) {
        String says = field.says() == null ? "" : field.says().value();
        if (field.measured() == null && field.between() == null) {
            return says.isEmpty() ? Optional.empty() : Optional.of(says);
        }
        String all = (says.isEmpty() ? "" : says + ": ") + Expected.of(field);
        return Optional.of(all.substring(0, 1).toUpperCase(Locale.ROOT) + all.substring(1));
    }

    private Choice choice(Field field) {
        Class<?> raw = RecordShape.raw(field.type());
        if (raw == Optional.class) {
            return choice(field.given()).or(Binder.UNKNOWN);
        }
        if (raw == List.class) {
            return list(field, choice(field.inside(RecordShape.argument(field.type(), 0))));
        }
        if (raw == Map.class) {
            ObjectNode map = JSON.createObjectNode().put("type", "object");
            map.set("additionalProperties", choice(field.inside(RecordShape.argument(field.type(), 1))).schema());
            return Choice.of(map);
        }
        if (raw.isEnum()) {
            return new Choice(Words.all(raw), List.of());
        }
        return raw.isRecord() && !ScalarBinder.reads(raw) ? Choice.of(reference(raw)) : ScalarSchema.of(raw, field)
                .stream().reduce(new Choice(List.of(), List.of()), Choice::or, (a, b) -> b);
    }

    private static Choice list(Field field, Choice item) {
        ObjectNode array = JSON.createObjectNode().put("type", "array");
        array.set("items", item.schema());
        Count count = field.count();
        if (count == null) {
            return item.or(array).or(Binder.NONE);
        }
        array.put("minItems", count.min());
        if (count.max() < Integer.MAX_VALUE) {
            array.put("maxItems", count.max());
        }
        Choice some = count.min() <= 1 ? item.or(array) : Choice.of(array);
        return count.min() == 0 ? some.or(Binder.NONE) : some;
    }

    private ObjectNode reference(Class<?> type) {
        String name = Words.key(type.getSimpleName()).strip().replace(' ', '-');
        Class<?> earlier = named.putIfAbsent(name, type);
        if (earlier != null && earlier != type) {
            throw new IllegalStateException(earlier + " and " + type + " share the name " + name);
        }
        if (earlier == null) {
            definitions.putObject(name);
            RecordShape shape = RecordShape.of(type);
            ObjectNode block = block(shape);
            definitions.set(name, shape.wordType() == null ? block
                    : new Choice(Words.all(shape.wordType()), List.of(block)).schema());
        }
        return JSON.createObjectNode().put("$ref", "#/$defs/" + name);
    }
}
