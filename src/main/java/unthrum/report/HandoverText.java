package unthrum.report;

/** The handover sheet as text. */
public final class HandoverText {
    private HandoverText() {
    }

    public static String of(HandoverSheet sheet, int width, Style style) {
        Page page = new Page(width, style);
        page.title(sheet.title());
        page.paragraph(0, sheet.subtitle());
        for (HandoverSheet.Section section : sheet.sections()) {
            page.blank();
            page.heading(section.topic().title());
            section.lines().forEach(line -> page.bullet(0, line));
        }
        return page.toString();
    }
}
