package unthrum.built;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import unthrum.reading.Nearest;
import unthrum.reading.Places;
import unthrum.reading.Words;
import unthrum.survey.PanelEntry;
import unthrum.survey.Survey;

/** Reports days to come, work done by nobody, and panels that the survey does not have. */
final class BuiltCheck {
    private final Built built;
    private final Survey survey;
    private final Places places;
    private final LocalDate today;
    private final Map<String, String> seen = new HashMap<>();

    /** @param survey null when it could not be read */
    BuiltCheck(Built built, Survey survey, Places places, LocalDate today) {
        this.built = built;
        this.survey = survey;
        this.places = places;
        this.today = today;
    }

    void all() {
        if (places.sound("finished")) {
            day("finished", built.finished());
        }
        if (places.sound("sign off")) {
            built.signOff().ifPresent(s -> day("sign off.when", Optional.of(s.when())));
        }
        if (places.sound("done")) {
            done("done", built.done(), Optional.empty());
        }
        for (int i = 0; built.panels() != null && i < built.panels().size(); i++) {
            String path = "panels[" + i + "]";
            if (places.sound(path)) {
                panel(built.panels().get(i), path);
            }
        }
    }

    private void panel(BuiltPanel panel, String path) {
        String name = path + ".panel";
        String earlier = seen.putIfAbsent(panel.panel().toLowerCase(Locale.ROOT), name);
        if (earlier != null) {
            places.problem(name, "the panel '" + panel.panel() + "' again (first in line " + places.line(earlier) + ")",
                    "each panel once", "");
        }
        List<String> known = survey == null ? List.of() : survey.panels().stream().map(PanelEntry::panel).toList();
        if (survey != null && !known.contains(panel.panel())) {
            places.problem(name, "no panel '" + panel.panel() + "' in the survey", "the name of a panel in it",
                    Nearest.remedy(panel.panel(), known));
        }
        day(path + ".when", panel.when());
        done(path + ".done", panel.done(), panel.who());
    }

    private void done(String path, Optional<List<Done>> entries, Optional<String> who) {
        for (int i = 0; i < entries.orElse(List.of()).size(); i++) {
            Done done = entries.get().get(i);
            String at = path + "[" + i + "]";
            if (done.isStated() && done.who().or(() -> who).or(built::who).isEmpty()) {
                places.problem(at, "'" + done.work().stream().map(Words::of).collect(Collectors.joining(", ")) + "' done by nobody",
                        "who did it, here, with the panel or with the job", "add 'who'");
            }
            day(at + ".when", done.when());
        }
    }

    /** No day is to come, and the last day of the work is the last. */
    private void day(String path, Optional<LocalDate> day) {
        if (day.isEmpty()) {
            return;
        }
        Optional<LocalDate> last = places.sound("finished") && !path.equals("sign off.when") ? built.finished()
                : Optional.empty();
        if (day.get().isAfter(today)) {
            places.problem(path, "the day " + day.get() + ", which is to come", "no day after " + today, "");
        } else if (last.filter(day.get()::isAfter).isPresent()) {
            places.problem(path, "work on " + day.get() + ", after the job was finished on " + last.get(),
                    "no day after that", "move 'finished' on, or correct the day");
        }
    }
}
