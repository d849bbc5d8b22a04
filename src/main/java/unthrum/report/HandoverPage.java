package unthrum.report;

/** The handover sheet as one printable page: no script, nothing fetched, styles for screen and paper. */
public final class HandoverPage {
    private static final String STYLE = """
            ul { margin: 0; padding-left: 1.2rem; }
            li { margin: .25rem 0; break-inside: avoid; }
            .sign { margin-top: 3rem; display: flex; gap: 2rem; }
            .sign p { flex: 1; border-top: 1px solid currentColor; padding-top: .3rem; font-size: .9rem; }
            @media print {
              .sign { break-inside: avoid; }
            }
            """;

    private HandoverPage() {
    }

    public static String of(HandoverSheet sheet) {
        StringBuilder html = new StringBuilder("<p>").append(Markup.escaped(sheet.subtitle())).append("</p>\n");
        for (HandoverSheet.Section section : sheet.sections()) {
            html.append("<section>\n<h2>").append(Markup.escaped(section.topic().title())).append("</h2>\n<ul>\n");
            section.lines().forEach(line -> html.append("<li>").append(Markup.escaped(line)).append("</li>\n"));
            html.append("</ul>\n</section>\n");
        }
        html.append("<div class=\"sign\"><p>Handed over by</p><p>Taken over by</p><p>Day</p></div>\n");
        return Paper.page(sheet.title(), STYLE, html.toString());
    }
}
