package unthrum.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import unthrum.audit.Audit;
import unthrum.audit.Finding;
import unthrum.built.Built;
import unthrum.reading.Quantity;

/**
 * What the owner gets in plain words, as a value that text and page render alike.
 *
 * @param title    the job
 * @param subtitle who did it and when
 */
public record HandoverSheet(String title, String subtitle, List<Section> sections) {

    /** A heading with its lines; one without lines is left away. */
    public record Section(String title, List<String> lines) {
    }

    public static HandoverSheet of(Audit audit) {
        Built built = audit.built();
        OwnerWords words = new OwnerWords(audit);
        List<Section> sections = new ArrayList<>();
        add(sections, "Still to be done before you drive off", open(audit, Finding::beforeLeaving));
        add(sections, "What was done", words.done());
        add(sections, "What was left as it was, and why", words.left());
        add(sections, "Drilling and unbolting later", words.drilling());
        add(sections, "Where things come off for service", words.service());
        add(sections, "Take care", words.care());
        add(sections, "Cleaning", words.cleaning());
        add(sections, "Before and after, measured alike", built.measured().orElse(List.of()).stream()
                .filter(m -> m.before().isPresent() && m.after().isPresent()).map(HandoverSheet::measured).toList());
        add(sections, "Notes for the next visit", open(audit, f -> !f.beforeLeaving()));
        String by = built.who().map(w -> ", by " + w).orElse("");
        String signed = built.signOff().filter(s -> s.digest().equals(audit.digest()))
                .map(s -> " Signed by " + s.who() + " on " + s.when() + ".").orElse("");
        return new HandoverSheet(audit.plan().survey().survey(), "Finished on " + built.finished() + by + "." + signed,
                sections);
    }

    private static void add(List<Section> sections, String title, List<String> lines) {
        if (!lines.isEmpty()) {
            sections.add(new Section(title, lines));
        }
    }

    private static List<String> open(Audit audit, Function<Finding, Boolean> which) {
        Sentences sentences = new Sentences(PlaceNames.anywhere());
        return audit.findings().stream().filter(which::apply).map(f -> English.sentence(English.capital(
                sentences.place(f.place())) + ": " + f.mistake().words() + " (" + f.what() + ")")).distinct().toList();
    }

    private static String measured(Built.Measured m) {
        Quantity before = m.before().orElseThrow();
        Quantity after = m.after().orElseThrow();
        return English.sentence(English.capital(m.what()) + ": " + before + " before, " + after + " after");
    }
}
