package unthrum.reading;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import unthrum.reading.RecordShape.Field;

/** A single text where a list is wanted: several entries without brackets, or one where there must be more. */
final class Unlisted {
    private static final String BETWEEN = "\\s*,\\s+|\\s*,(?![0-9\\s])";
    private static final String TIMES = BETWEEN + "|\\s+(?:x|×|by)\\s+|(?<=[0-9])[x×](?=[0-9])";

    private final Node.Scalar written;
    private final Field list;
    private final Field item;
    private final Class<?> raw;

    /** @param item what the list holds */
    Unlisted(Node.Scalar written, Field list, Field item) {
        this.written = written;
        this.list = list;
        this.item = item;
        this.raw = RecordShape.raw(item.type());
    }

    /** Whether it cannot stand for a list of one. */
    boolean isWrong() {
        return isBlock() || list.count() != null && list.count().min() > 1 || parts().size() > 1;
    }

    String found() {
        return written.shown() + " in place of a list";
    }

    String expected() {
        String each = Expected.of(list);
        return isBlock() ? "a list, each entry with " + Expected.of(item) : list.count() == null ? each : "a list of " + each;
    }

    String remedy() {
        if (isBlock()) {
            return "write '[{" + RecordShape.of(raw).fields().stream().filter(f -> !f.optional())
                    .map(f -> f.key() + ": …").collect(Collectors.joining(", ")) + "}]'";
        }
        List<String> parts = new ArrayList<>(parts());
        int wanted = list.count() == null ? parts.size() : list.count().min();
        if (parts.stream().allMatch(this::reads) && (list.count() == null || parts.size() <= list.count().max())) {
            parts.addAll(Collections.nCopies(Math.max(0, wanted - parts.size()), "…"));
            return "write '[" + String.join(", ", parts) + "]'";
        }
        return raw == Quantity.class ? "write them in brackets, each with its unit; decimals have a point"
                : "write them in brackets, with commas between";
    }

    /** Whether an entry is a block of keys that no word stands for. */
    private boolean isBlock() {
        return raw.isRecord() && !ScalarBinder.reads(raw) && RecordShape.of(raw).wordType() == null;
    }

    /** The entries; of several quantities the last lends its unit to those without, and decimals get a point. */
    private List<String> parts() {
        boolean text = raw == String.class || written.quoted();
        if (text || raw != Quantity.class) {
            return text ? List.of(written.text()) : List.of(written.text().split(BETWEEN));
        }
        String[] all = written.text().split(TIMES);
        String last = all[all.length - 1];
        String unit = last.replaceAll("^-?[0-9.,]*", "");
        List<String> parts = new ArrayList<>();
        for (String part : all) {
            String whole = all.length > 1 && part.matches("[0-9.,]+") ? part + unit : part;
            parts.add(all.length > 1 ? Commas.meant(whole).stream().filter(this::reads).findFirst().orElse(whole) : whole);
        }
        return parts;
    }

    private boolean reads(String part) {
        ScalarBinder binder = new ScalarBinder(new Places(""));
        Node.Scalar scalar = new Node.Scalar(part, false, 0, 0);
        return (raw.isRecord() && !ScalarBinder.reads(raw) ? binder.word(scalar, RecordShape.of(raw).wordType(), "")
                : binder.bind(scalar, item, "")) != null;
    }
}
