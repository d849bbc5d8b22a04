package unthrum.reading;

import java.io.InputStream;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Other words that people say for those of the files, from {@code rules/near-words.yaml}. */
final class NearWords {
    private static final String FILE = "rules/near-words.yaml";

    private NearWords() {
    }

    /** The file as a whole. */
    record Table(@Count(min = 1) List<Entry> words) {
    }

    /** Words that people say, each of which may mean any of those to write. */
    record Entry(List<String> said, List<String> write) {
    }

    /** Read when the first unknown word is met, since sound files have none. */
    private static final class Loaded {
        private static final Map<String, List<String>> BY_SAID = bySaid();

        private static Map<String, List<String>> bySaid() {
            Map<String, List<String>> words = new LinkedHashMap<>();
            table().words().forEach(entry -> entry.said().forEach(said -> words.put(Nearest.plain(said), entry.write())));
            return words;
        }
    }

    static Table table() {
        InputStream in = NearWords.class.getClassLoader().getResourceAsStream("unthrum/" + FILE);
        return YamlReader.read(FILE, in, Table.class);
    }

    /** Those of the known words that people mean by what was written, in the order of the table. */
    static List<String> meant(String written, Collection<String> known) {
        // a mistake in the table itself is told while the table is being read
        List<String> words = Loaded.BY_SAID == null ? null : Loaded.BY_SAID.get(Nearest.plain(written));
        return words == null ? List.of() : words.stream().filter(known::contains).toList();
    }
}
