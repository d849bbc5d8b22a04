package unthrum.drill;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import unthrum.reading.Count;
import unthrum.reading.Says;
import unthrum.reading.YamlReader;

/** What panels of one zone are usually like: a choice of values for every key of a survey. */
record UsualPanel(
        String zone,
        @Says("The bodies that have such a panel") List<String> bodies,
        @Says("From and to, along the panel, in mm") @Count(min = 2, max = 2) List<Integer> length,
        @Says("From and to, across the panel, in mm") @Count(min = 2, max = 2) List<Integer> width,
        @Says("How many ribs may run across it") List<Integer> ribs,
        @Says("What such a rib is") String rib,
        @Says("What is fixed on it, if anything is") Optional<String> fixing,
        Map<String, List<String>> keys) {

    private static final String NAME = "unthrum/practice-panels.yaml";

    /** The file that holds them: what any panel may be like unless its zone says otherwise, and the zones. */
    record File(Map<String, List<String>> anywhere, List<UsualPanel> panels) {
    }

    /** The file in the jar. */
    static File file() {
        return YamlReader.read(NAME, UsualPanel.class.getClassLoader().getResourceAsStream(NAME), File.class);
    }
}
