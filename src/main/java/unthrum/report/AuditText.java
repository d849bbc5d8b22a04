package unthrum.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import unthrum.audit.Audit;
import unthrum.audit.Audit.AuditedPanel;
import unthrum.audit.Evidence;
import unthrum.audit.Figure;
import unthrum.audit.Finding;
import unthrum.audit.Mistake;
import unthrum.audit.Severity;
import unthrum.knowledge.RuleCard;
import unthrum.reading.Words;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.Reason;

/** An audit as text: the judgement first, then what must be dealt with before the vehicle leaves, then the rest. */
public final class AuditText {
    private static final int LABELS = 11;

    private final Audit audit;
    private final Page page;
    private final Sentences sentences = new Sentences(PlaceNames.anywhere());

    private AuditText(Audit audit, Page page) {
        this.audit = audit;
        this.page = page;
    }

    public static String of(Audit audit, int width, Style style) {
        Page page = new Page(width, style);
        new AuditText(audit, page).print();
        return page.toString();
    }

    /** Findings that are told together: the same thing on several places. */
    private record Alike(Severity severity, Mistake mistake, String what, List<String> rules) {
        static Alike of(Finding f) {
            return new Alike(f.severity(), f.mistake(), f.what(), f.rules());
        }
    }

    private void print() {
        page.title(audit.plan().survey().survey() + ": the finished job");
        page.paragraph(0, judgement());
        page.blank();
        section("Before the vehicle leaves", audit.findings().stream().filter(Finding::beforeLeaving).toList());
        section("Afterwards", audit.findings().stream().filter(f -> !f.beforeLeaving()).toList());
        right();
        if (audit.built().signOff().isEmpty()) {
            page.paragraph(0, "Nobody has signed it off yet.");
        }
        page.paragraph(0, "Digest of what was audited, for a signature: " + audit.digest());
    }

    private String judgement() {
        String words = switch (audit.release()) {
            case RELEASE -> "Release: nothing is wrong, and all of it is shown.";
            case RELEASE_WITH_NOTES -> "Release with notes.";
            case DO_NOT_RELEASE -> "Do not release.";
        };
        List<String> counts = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            int n = audit.of(severity).size();
            if (n > 0) {
                counts.add(severity == Severity.UNPROVEN || severity == Severity.WASTE
                        ? n + " " + Words.of(severity) : English.count(n, Words.of(severity)));
            }
        }
        return counts.isEmpty() ? words : words + " Found: " + String.join(", ", counts) + ".";
    }

    private void section(String title, List<Finding> findings) {
        if (findings.isEmpty()) {
            return;
        }
        page.heading(title);
        Map<Alike, List<Finding>> alike = findings.stream()
                .collect(Collectors.groupingBy(Alike::of, LinkedHashMap::new, Collectors.toList()));
        alike.values().forEach(this::finding);
    }

    private void finding(List<Finding> findings) {
        Finding first = findings.get(0);
        List<String> places = findings.stream().map(f -> sentences.place(f.place())).distinct().toList();
        Entries entries = new Entries();
        entries.add(Words.of(first.severity()), English.capital(English.and(places)) + ": " + first.mistake().words()
                + " (" + first.what() + ")" + (first.figures().isEmpty() ? "" : ": " + figures(first)) + ".");
        because(first).forEach(clause -> entries.add("because", clause));
        evidence(findings).forEach(e -> entries.add("evidence", e));
        entries.add("follows", English.sentence(first.consequence()));
        entries.addAll("remedy", first.mistake().remedies().stream().map(English::sentence).toList());
        entries.print(page, 0, LABELS);
        page.blank();
    }

    private static String figures(Finding finding) {
        return finding.figures().stream().map(Figure::toString).collect(Collectors.joining(", "));
    }

    /** Each rule once, with its sentence for the first place. */
    private List<String> because(Finding finding) {
        Map<RuleCard, String> told = new LinkedHashMap<>();
        for (Judgement judgement : finding.against()) {
            for (Reason reason : judgement.reasons()) {
                told.putIfAbsent(reason.rule(), English.sentence(sentences.because(reason)) + " ["
                        + reason.rule().id() + "]");
            }
        }
        return told.isEmpty() ? finding.rule().map(r -> "[" + r + "]").stream().toList() : List.copyOf(told.values());
    }

    private static List<String> evidence(List<Finding> findings) {
        return findings.stream().flatMap(f -> f.evidence().stream()).map(Evidence::toString).distinct()
                .map(e -> English.capital(e) + ".").toList();
    }

    private void right() {
        page.heading("What is right");
        List<String> sound = audit.panels().stream().filter(AuditedPanel::isSound).map(AuditedPanel::name).toList();
        page.paragraph(0, sound.isEmpty() ? "No panel is without a finding."
                : English.capital(English.count(sound.size(), "panel")) + " without a finding: " + English.and(sound) + ".");
        page.paragraph(0, "Fitted: " + Amounts.mass(audit.totals().mass()) + " in all, "
                + Amounts.mass(audit.totals().roof()) + " of it on roofs; planned: "
                + Amounts.mass(audit.plan().totals().mass()) + ".");
    }
}
