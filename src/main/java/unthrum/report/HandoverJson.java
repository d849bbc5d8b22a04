package unthrum.report;

import java.time.LocalDate;
import java.util.Map;
import unthrum.audit.Audit;
import unthrum.reading.Words;

/** The handover sheet as JSON by the published schema {@code unthrum/handover.schema.json}. */
public final class HandoverJson {
    /** Goes up when a program that reads the JSON would have to change. */
    static final int FORMAT = 1;

    private HandoverJson() {
    }

    public static String of(Audit audit) {
        HandoverSheet sheet = HandoverSheet.of(audit);
        return Json.write(Json.object("format", FORMAT, "kind", "handover", "title", sheet.title(),
                "finished", audit.built().finished().map(LocalDate::toString), "by", audit.built().who(),
                "release", Words.of(audit.release()), "digest", audit.digest(),
                "sections", sheet.sections().stream().map(HandoverJson::section).toList()));
    }

    private static Map<String, Object> section(HandoverSheet.Section section) {
        return Json.object("topic", Words.of(section.topic()), "title", section.topic().title(),
                "lines", section.lines());
    }
}
