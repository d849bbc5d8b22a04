package unthrum.report;

import java.util.ArrayList;
import java.util.List;
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

    /** What a section is about, in the order of the sheet. */
    public enum Topic {
        STILL_TO_BE_DONE("Still to be done before you drive off"),
        DONE("What was done"),
        LEFT("What was left as it was, and why"),
        DRILLING("Drilling and unbolting later"),
        SERVICE("Where things come off for service"),
        CARE("Take care"),
        CLEANING("Cleaning"),
        MEASURED("Before and after, measured alike"),
        NOTES("Notes for the next visit");

        private final String title;

        Topic(String title) {
            this.title = title;
        }

        public String title() {
            return title;
        }
    }

    /** A heading with its lines; one without lines is left away. */
    public record Section(Topic topic, List<String> lines) {
    }

    public static HandoverSheet of(Audit audit) {
        Built built = audit.built();
        OwnerWords words = new OwnerWords(audit);
        OwnerFindings findings = new OwnerFindings(audit);
        List<Section> sections = new ArrayList<>();
        add(sections, Topic.STILL_TO_BE_DONE, findings.lines(Finding::beforeLeaving));
        add(sections, Topic.DONE, words.done());
        add(sections, Topic.LEFT, words.left());
        add(sections, Topic.DRILLING, words.drilling());
        add(sections, Topic.SERVICE, words.service());
        add(sections, Topic.CARE, words.care());
        add(sections, Topic.CLEANING, words.cleaning());
        add(sections, Topic.MEASURED, built.measured().orElse(List.of()).stream()
                .filter(m -> m.before().isPresent() && m.after().isPresent()).map(HandoverSheet::measured).toList());
        add(sections, Topic.NOTES, findings.lines(f -> !f.beforeLeaving()));
        String by = built.who().map(w -> ", by " + w).orElse("");
        String signed = built.signOff().filter(s -> s.digest().equals(audit.digest()))
                .map(s -> " Signed by " + s.who() + " on " + s.when() + ".").orElse("");
        String finished = built.finished().map(day -> "Finished on " + day).orElse("Not finished yet");
        return new HandoverSheet(audit.plan().survey().survey(), finished + by + "." + signed, sections);
    }

    private static void add(List<Section> sections, Topic topic, List<String> lines) {
        if (!lines.isEmpty()) {
            sections.add(new Section(topic, lines));
        }
    }

    private static String measured(Built.Measured m) {
        Quantity before = m.before().orElseThrow();
        Quantity after = m.after().orElseThrow();
        return English.sentence(English.capital(m.what()) + ": " + before + " before, " + after + " after");
    }
}
