package unthrum.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A rule's sentence with slots for its bound variables: {@code {bay}} or {@code {bay.span}}. */
record Template(List<Part> parts) {

    private static final Pattern SLOT = Pattern.compile("\\{(\\w+)(?:\\.(\\w+))?}");

    /** Fixed text, or a slot. */
    sealed interface Part permits Text, Slot {
    }

    record Text(String words) implements Part {
    }

    /** @param component empty when the slot names the variable alone */
    record Slot(String variable, String component) implements Part {
        @Override
        public String toString() {
            return "{" + variable + (component.isEmpty() ? "" : "." + component) + "}";
        }
    }

    static Template of(String written) {
        List<Part> parts = new ArrayList<>();
        int end = 0;
        for (Matcher slot = SLOT.matcher(written); slot.find(); end = slot.end()) {
            text(parts, written.substring(end, slot.start()), written);
            parts.add(new Slot(slot.group(1), slot.group(2) == null ? "" : slot.group(2)));
        }
        text(parts, written.substring(end), written);
        return new Template(List.copyOf(parts));
    }

    private static void text(List<Part> parts, String words, String written) {
        if (words.indexOf('{') >= 0 || words.indexOf('}') >= 0) {
            throw new IllegalStateException("'" + written + "' has a slot that names nothing");
        }
        if (!words.isEmpty()) {
            parts.add(new Text(words));
        }
    }
}
