package unthrum.report;

import java.util.ArrayList;
import java.util.List;
import unthrum.report.JobSheet.Box;
import unthrum.report.JobSheet.Entry;
import unthrum.report.Page.Align;
import unthrum.report.Page.Column;
import unthrum.report.Page.Row;

/** A job card as text: every step with its boxes to tick, and room for who and when. */
public final class JobCardText {

    private static final int INDENT = 4;
    private static final int LABELS = 11;
    private static final String WHO = "who __________";
    private static final String WHEN = "when ________";

    private JobCardText() {
    }

    public static String of(JobSheet sheet, int width, Style style) {
        Page page = new Page(width, style);
        page.title(sheet.title());
        sheet.summary().forEach(line -> page.paragraph(0, line));
        page.blank();
        for (JobSheet.Section section : sheet.sections()) {
            page.heading(section.title());
            for (Entry entry : section.entries()) {
                entry(entry, page);
                page.blank();
            }
        }
        return page.toString().stripTrailing() + "\n";
    }

    private static void entry(Entry entry, Page page) {
        String effort = entry.effort().isEmpty() ? "" : " (" + entry.effort() + ")";
        page.title(Wrap.padLeft(String.valueOf(entry.number()), 2) + "  " + entry.title() + effort);
        String last = "";
        for (JobSheet.Line line : entry.lines()) {
            page.entry(INDENT, line.label().equals(last) ? "" : line.label(), LABELS, line.text());
            last = line.label();
        }
        boxes(entry.boxes(), page);
    }

    private static void boxes(List<Box> boxes, Page page) {
        boolean told = boxes.stream().anyMatch(b -> !b.what().isEmpty());
        List<Column> columns = new ArrayList<>(List.of(new Column("", Align.LEFT), new Column("", Align.LEFT)));
        if (told) {
            columns.add(new Column("", Align.ELASTIC));
        }
        columns.addAll(List.of(new Column("", Align.LEFT), new Column("", Align.LEFT)));
        page.rows(INDENT, columns, boxes.stream().map(b -> new Row(told
                ? List.of("[ ]", b.panel(), b.what(), WHO, WHEN) : List.of("[ ]", b.panel(), WHO, WHEN))).toList());
    }
}
