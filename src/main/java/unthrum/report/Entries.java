package unthrum.report;

import java.util.ArrayList;
import java.util.List;

/** Labelled paragraphs; a label is written once for all that follow under it. */
final class Entries {

    private record Entry(String label, String words) {
    }

    private final List<Entry> entries = new ArrayList<>();

    void add(String label, String words) {
        entries.add(new Entry(label, words));
    }

    void addAll(String label, List<String> words) {
        words.forEach(w -> add(label, w));
    }

    boolean isEmpty() {
        return entries.isEmpty();
    }

    void print(Page page, int indent, int column) {
        String last = "";
        for (Entry entry : entries) {
            page.entry(indent, entry.label.equals(last) ? "" : entry.label, column, entry.words);
            last = entry.label;
        }
    }
}
