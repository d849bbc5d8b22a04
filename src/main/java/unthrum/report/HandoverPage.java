package unthrum.report;

/** The handover sheet as one printable page: no script, nothing fetched, styles for screen and paper. */
public final class HandoverPage {
    private static final String STYLE = """
            :root { color-scheme: light dark; }
            body { font: 11pt/1.45 Georgia, "Times New Roman", serif; max-width: 42rem; margin: 2rem auto; padding: 0 1rem; }
            h1 { font-size: 1.6rem; margin: 0 0 .2rem; }
            h2 { font-size: 1.1rem; margin: 1.6rem 0 .4rem; border-bottom: 1px solid currentColor; break-after: avoid; }
            p { margin: 0; }
            ul { margin: 0; padding-left: 1.2rem; }
            li { margin: .25rem 0; break-inside: avoid; }
            .sign { margin-top: 3rem; display: flex; gap: 2rem; }
            .sign p { flex: 1; border-top: 1px solid currentColor; padding-top: .3rem; font-size: .9rem; }
            @media print {
              :root { color-scheme: light; }
              @page { size: A4; margin: 18mm 20mm; }
              body { max-width: none; margin: 0; padding: 0; color: #000; background: #fff; }
              .sign { break-inside: avoid; }
            }
            """;

    private HandoverPage() {
    }

    public static String of(HandoverSheet sheet) {
        StringBuilder html = new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        html.append("<title>").append(Markup.escaped(sheet.title())).append("</title>\n<style>\n").append(STYLE)
                .append("</style>\n</head>\n<body>\n<main>\n");
        html.append("<h1>").append(Markup.escaped(sheet.title())).append("</h1>\n<p>")
                .append(Markup.escaped(sheet.subtitle()))
                .append("</p>\n");
        for (HandoverSheet.Section section : sheet.sections()) {
            html.append("<section>\n<h2>").append(Markup.escaped(section.topic().title())).append("</h2>\n<ul>\n");
            section.lines().forEach(line -> html.append("<li>").append(Markup.escaped(line)).append("</li>\n"));
            html.append("</ul>\n</section>\n");
        }
        return html.append("<div class=\"sign\"><p>Handed over by</p><p>Taken over by</p><p>Day</p></div>\n")
                .append("</main>\n</body>\n</html>\n").toString();
    }
}
