package unthrum.report;

/** Text as it must stand in markup. */
final class Markup {

    private Markup() {
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
