package unthrum.cli;

import picocli.CommandLine.Option;
import unthrum.report.Style;

/** The options on how text looks. */
final class Look {

    static final int NARROWEST = 40;
    static final int WIDEST = 400;
    private static final int USUAL = 80;

    /** A wide window does not ask for lines that the eye loses its place in. */
    private static final int READABLE = 120;

    @Option(names = "--width", paramLabel = "N", description = "Columns of text, 40 to 400; else COLUMNS up to 120, else 80.")
    private Integer width;

    @Option(names = "--plain", description = "No colour and no bold; so too with NO_COLOR or a dumb terminal.")
    private boolean plain;

    int width(Surroundings surroundings) {
        if (width != null) {
            if (width < NARROWEST || width > WIDEST) {
                throw new WrongUse("--width " + width + " is out of range; give " + NARROWEST + " to " + WIDEST);
            }
            return width;
        }
        String columns = surroundings.environment().getOrDefault("COLUMNS", "");
        int stated = columns.matches("[1-9][0-9]{0,3}") ? Integer.parseInt(columns) : USUAL;
        return Math.max(NARROWEST, Math.min(stated, READABLE));
    }

    Style style(Surroundings surroundings) {
        boolean dumb = "dumb".equals(surroundings.environment().get("TERM"));
        boolean colour = surroundings.terminal() && !plain && !dumb && !surroundings.has("NO_COLOR");
        return Style.of(colour, surroundings.charset());
    }
}
