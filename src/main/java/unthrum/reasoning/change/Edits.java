package unthrum.reasoning.change;

import java.util.ArrayList;
import java.util.List;
import unthrum.reading.Nearest;
import unthrum.reading.Problem;
import unthrum.reading.Problems;
import unthrum.reading.RecordPath;
import unthrum.reasoning.change.Change.Turn;
import unthrum.survey.PanelEntry;
import unthrum.survey.SurveyReader;

/**
 * Reads edits such as 'clearance=9 mm' with the survey's own keys, words and units. Each is read on the panel as those
 * before it leave it, so that a panel may be given a shape and then its rise; what they come to together must be a
 * panel that a survey could hold.
 *
 * @param turns the facts that differ
 * @param panel the panel with every turn made
 */
record Edits(List<Turn> turns, PanelEntry panel) {

    private static final String NONE = "none";

    /**
     * @param place what to call the place of the edits in a problem
     * @throws Problems all that is wrong with any of them
     */
    static Edits read(PanelTrial trial, PanelEntry today, String place, List<String> texts) {
        List<Turn> turns = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        PanelEntry panel = today;
        for (String text : texts) {
            try {
                List<Turn> read = read(trial.levers(panel), place + " '" + text + "'", text);
                turns.addAll(read);
                panel = apply(panel, read);
            } catch (Problems wrong) {
                problems.addAll(wrong.all());
            }
        }
        if (problems.isEmpty()) {
            String together = place + " '" + String.join("', '", texts) + "'";
            problems.addAll(SurveyReader.problems(together, panel, trial.drive()));
        }
        if (!problems.isEmpty()) {
            throw Problems.of(problems);
        }
        return new Edits(turns, panel);
    }

    private static List<Turn> read(List<Lever> levers, String place, String text) {
        int sign = text.indexOf('=');
        if (sign < 0) {
            throw Problems.at(place, "no '='", "a fact and its value, such as 'clearance=9 mm'", "");
        }
        String key = text.substring(0, sign).strip();
        String value = text.substring(sign + 1).strip();
        List<Lever> meant = levers.stream().filter(l -> l.name().equals(key) || l.path().toString().equals(key)
                || l.key().equals(key)).toList();
        if (meant.isEmpty()) {
            List<String> names = levers.stream().map(Lever::name).toList();
            throw Problems.at(place, "no fact '" + key + "' on this panel", "one of " + String.join(", ", names),
                    Nearest.remedy(key, names));
        }
        return meant.stream().map(lever -> new Turn(lever, value(place, lever, value))).toList();
    }

    private static Object value(String place, Lever lever, String text) {
        return lever.isList() ? list(place, lever, text) : lever.path().read(place, text);
    }

    private static List<Object> list(String place, Lever lever, String text) {
        if (text.equals(NONE)) {
            return List.of();
        }
        List<Object> values = new ArrayList<>();
        for (String word : text.split(",")) {
            values.add(entry(place, lever.key(), word.strip()));
        }
        return List.copyOf(values);
    }

    /** An entry named by its kind alone; what else the survey tells of it stays unknown. */
    private static Object entry(String place, String key, String word) {
        boolean plain = RecordPath.of(PanelEntry.class, key + "[0]").words().isPresent();
        Object kind = RecordPath.of(PanelEntry.class, key + (plain ? "[0]" : "[0].kind")).read(place, word);
        return plain ? kind : Single.of(key, kind);
    }

    /** The panel with every turn made. */
    static PanelEntry apply(PanelEntry panel, List<Turn> turns) {
        PanelEntry changed = panel;
        for (Turn turn : turns) {
            changed = turn.lever().set(changed, turn.to());
        }
        return changed;
    }
}
