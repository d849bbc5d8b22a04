package unthrum.report;

import java.util.List;
import unthrum.report.JobSheet.Box;
import unthrum.report.JobSheet.Entry;
import unthrum.report.JobSheet.Line;

/** A job card as one printable page: a box for each panel of each step, with room for who and when. */
public final class JobCardPage {
    private static final String STYLE = """
            body { font-size: 10pt; line-height: 1.35; max-width: 50rem; }
            article { margin: 0 0 1rem; }
            h3 { font-size: 1rem; margin: .8rem 0 .2rem; break-after: avoid; }
            h3 small { font-weight: normal; }
            dl { margin: 0; display: grid; grid-template-columns: 5.5rem 1fr; break-inside: avoid; }
            dt { font-style: italic; }
            dd { margin: 0; }
            .care { font-weight: bold; }
            table { width: 100%; border-collapse: collapse; margin-top: .3rem; }
            th { text-align: left; font-weight: normal; font-style: italic; font-size: .85rem; }
            td, th { padding: .2rem .4rem .2rem 0; vertical-align: top; }
            td { border-bottom: 1px solid #888; }
            td.panel { width: 11rem; }
            td.sign { width: 8rem; border-left: 1px solid #888; }
            tr { break-inside: avoid; }
            thead { break-after: avoid; }
            .box { display: inline-block; width: .8rem; height: .8rem; border: 1.5px solid currentColor;
              margin-right: .5rem; vertical-align: -1px; }
            """;

    private JobCardPage() {
    }

    public static String of(JobSheet sheet) {
        StringBuilder html = new StringBuilder();
        sheet.summary().forEach(line -> html.append("<p>").append(Markup.escaped(line)).append("</p>\n"));
        for (JobSheet.Section section : sheet.sections()) {
            html.append("<section>\n<h2>").append(Markup.escaped(section.title())).append("</h2>\n");
            section.entries().forEach(entry -> entry(entry, html));
            html.append("</section>\n");
        }
        return Paper.page(sheet.title(), STYLE, html.toString());
    }

    private static void entry(Entry entry, StringBuilder html) {
        html.append("<article>\n<h3>").append(entry.number()).append(". ").append(Markup.escaped(entry.title()))
                .append(entry.effort().isEmpty() ? "" : " <small>" + Markup.escaped(entry.effort()) + "</small>")
                .append("</h3>\n<dl>\n");
        String last = "";
        for (Line line : entry.lines()) {
            html.append("<dt>").append(line.label().equals(last) ? "" : Markup.escaped(line.label())).append("</dt><dd")
                    .append(line.label().equals("take care") ? " class=\"care\"" : "").append(">")
                    .append(Markup.escaped(line.text())).append("</dd>\n");
            last = line.label();
        }
        html.append("</dl>\n");
        boxes(entry.boxes(), html);
        html.append("</article>\n");
    }

    private static void boxes(List<Box> boxes, StringBuilder html) {
        html.append("<table>\n<thead><tr><th>tick</th><th>what</th><th>who</th><th>when</th></tr></thead>\n<tbody>\n");
        for (Box box : boxes) {
            html.append("<tr><td class=\"panel\"><span class=\"box\"></span>").append(Markup.escaped(box.panel()))
                    .append("</td><td>").append(Markup.escaped(box.what()))
                    .append("</td><td class=\"sign\"></td><td class=\"sign\"></td></tr>\n");
        }
        html.append("</tbody>\n</table>\n");
    }
}
