package unthrum.drill;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import unthrum.reading.Places;
import unthrum.reading.Says;

/** What an apprentice has practised, by subject. */
@Says("What an apprentice has practised")
public record Progress(@Says("One entry for each subject") List<Practised> practised) {

    static final Progress NONE = new Progress(List.of());

    /** Reports what cannot be: more right answers than answers, and a subject twice. */
    static void check(Progress progress, Places places) {
        Set<String> seen = new HashSet<>();
        List<Practised> all = progress.practised() == null ? List.of() : progress.practised();
        for (int i = 0; i < all.size(); i++) {
            String path = "practised[" + i + "]";
            if (!places.sound(path)) {
                continue;
            }
            Practised one = all.get(i);
            if (one.right() > one.asked() - one.wrongReason()) {
                places.problem(path + ".right", one.right() + " right and " + one.wrongReason()
                        + " for the wrong reason of " + one.asked() + " asked", "no more than were asked", "");
            }
            if (!seen.add(one.subject())) {
                places.problem(path + ".subject", "the subject '" + one.subject() + "' again", "each subject once",
                        "delete one of the two");
            }
        }
    }

    public Optional<Practised> of(String subject) {
        return practised.stream().filter(p -> p.subject().equals(subject)).findFirst();
    }

    /** Whether a subject is to be practised that day; what was never practised always is. */
    public boolean isDue(String subject, LocalDate day) {
        return of(subject).map(p -> !p.due().isAfter(day)).orElse(true);
    }

    /** The progress after an answer, by subject in the order of their names. */
    Progress after(Map<String, Result> results, LocalDate today) {
        Map<String, Practised> all = new TreeMap<>();
        practised.forEach(p -> all.put(p.subject(), p));
        results.forEach((subject, result) -> all.put(subject,
                Boxes.after(all.getOrDefault(subject, Practised.unasked(subject, today)), result, today)));
        return new Progress(new ArrayList<>(all.values()));
    }
}
