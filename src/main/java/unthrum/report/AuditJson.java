package unthrum.report;

import java.time.LocalDate;
import java.util.Map;
import unthrum.audit.Audit;
import unthrum.audit.Audit.AuditedPanel;
import unthrum.audit.Evidence;
import unthrum.audit.Figure;
import unthrum.audit.Finding;
import unthrum.audit.FittedTotals;
import unthrum.audit.Severity;
import unthrum.reading.Dimension;
import unthrum.reading.Words;

/** An audit as JSON, complete, by the published schema {@code unthrum/audit.schema.json}. */
public final class AuditJson {
    /** Goes up when a program that reads the JSON would have to change. */
    static final int FORMAT = 1;

    private AuditJson() {
    }

    public static String of(Audit audit) {
        Sentences sentences = new Sentences(PlaceNames.anywhere());
        return Json.write(Json.object("format", FORMAT, "kind", "audit", "survey", audit.plan().survey().survey(),
                "finished", audit.built().finished().map(LocalDate::toString), "release", Words.of(audit.release()),
                "digest", audit.digest(), "counts", counts(audit),
                "findings", audit.findings().stream().map(f -> finding(f, sentences)).toList(),
                "panels", audit.panels().stream().map(AuditJson::panel).toList(), "totals", totals(audit.totals())));
    }

    private static Map<String, Object> counts(Audit audit) {
        Map<String, Object> counts = Json.object();
        for (Severity severity : Severity.values()) {
            counts.put(Words.of(severity), audit.of(severity).size());
        }
        return counts;
    }

    private static Map<String, Object> finding(Finding f, Sentences sentences) {
        return Json.object("severity", Words.of(f.severity()), "mistake", Words.of(f.mistake()),
                "says", f.mistake().words(), "place", JsonValues.place(f.place()), "what", f.what(),
                "beforeLeaving", f.beforeLeaving(), "rules", f.rules(),
                "against", f.against().stream().map(j -> JsonValues.judgement(j, sentences)).toList(),
                "figures", f.figures().stream().map(AuditJson::figure).toList(),
                "evidence", f.evidence().stream().map(AuditJson::evidence).toList(),
                "follows", f.consequence(), "remedies", f.mistake().remedies());
    }

    private static Map<String, Object> figure(Figure figure) {
        Map<String, Object> object = Json.object("name", figure.name());
        object.putAll(JsonValues.quantity(figure.value(), figure.dimension()));
        return object;
    }

    private static Map<String, Object> evidence(Evidence evidence) {
        return Json.object("says", evidence.says(), "who", evidence.who(),
                "when", evidence.when().map(LocalDate::toString));
    }

    private static Map<String, Object> panel(AuditedPanel panel) {
        return Json.object("name", panel.name(), "sound", panel.isSound(), "duties", panel.duties(),
                "fitted", panel.fitted().layers().stream().map(l -> l.material().material()).toList(),
                "mass", JsonValues.quantity(panel.fitted().mass(), Dimension.MASS));
    }

    private static Map<String, Object> totals(FittedTotals totals) {
        return Json.object("mass", JsonValues.quantity(totals.mass(), Dimension.MASS),
                "roofMass", JsonValues.quantity(totals.roof(), Dimension.MASS));
    }
}
