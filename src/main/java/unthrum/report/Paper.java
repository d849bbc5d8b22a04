package unthrum.report;

/** A page for screen and paper: no script, nothing fetched. */
final class Paper {
    private static final String STYLE = """
            :root { color-scheme: light dark; }
            body { font: 11pt/1.45 Georgia, "Times New Roman", serif; }
            body { max-width: 42rem; margin: 2rem auto; padding: 0 1rem; }
            h1 { font-size: 1.6rem; margin: 0 0 .2rem; }
            h2 { font-size: 1.1rem; margin: 1.6rem 0 .4rem; border-bottom: 1px solid currentColor; break-after: avoid; }
            p { margin: 0; }
            @media print {
              :root { color-scheme: light; }
              @page { size: A4; margin: 18mm 20mm; }
              body { max-width: none; margin: 0; padding: 0; color: #000; background: #fff; }
            }
            """;

    private Paper() {
    }

    /**
     * The whole document.
     *
     * @param style what this page looks like beside what all have
     * @param body  what stands below the title, as HTML
     */
    static String page(String title, String style, String body) {
        return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>" + Markup.escaped(title)
                + "</title>\n<style>\n" + STYLE + style + "</style>\n</head>\n<body>\n<main>\n<h1>" + Markup.escaped(title)
                + "</h1>\n" + body + "</main>\n</body>\n</html>\n";
    }
}
