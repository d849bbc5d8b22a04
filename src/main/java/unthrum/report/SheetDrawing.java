package unthrum.report;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import unthrum.cutting.Placement;
import unthrum.cutting.SheetLayout;
import unthrum.pieces.CutPiece;
import unthrum.pieces.Lying;
import unthrum.pieces.Lying.CutOut;
import unthrum.pieces.Lying.Point;
import unthrum.pieces.MaterialCut;

/**
 * One sheet as an SVG drawing in true scale: a user unit is a millimetre. Every piece with its outline, number, panel
 * and size; chains of dimensions along two edges to mark from; and the middle of every cut-out.
 */
final class SheetDrawing {

    /** Room for the chains of dimensions and the title, in text heights. */
    private static final int MARGIN = 6;
    private static final double LEAST_TEXT = 5;
    private static final double MOST_TEXT = 30;
    /** Text heights for each millimetre of the shorter side. */
    private static final double TEXT_SHARE = 1.0 / 36;
    /** The width of a letter against its height, for judging what fits. */
    private static final double LETTER = 0.6;
    /** A line to hold a ruler against, mm: a printer that shrinks the page shows at once. */
    private static final int RULER = 100;
    private static final double TENTHS = 10;

    private final MaterialCut cut;
    private final SheetLayout sheet;
    private final double width;
    private final double height;
    private final double text;
    private final double margin;
    private final StringBuilder svg = new StringBuilder();

    private SheetDrawing(MaterialCut cut, SheetLayout sheet) {
        this.cut = cut;
        this.sheet = sheet;
        this.width = sheet.stock().width() / TENTHS;
        this.height = SheetSketch.height(sheet) / TENTHS;
        this.text = Math.max(LEAST_TEXT, Math.min(MOST_TEXT, Math.min(width, height) * TEXT_SHARE));
        this.margin = MARGIN * text;
    }

    /** @param title what the sheet is, such as 'Sheet 3 of butyl-2' */
    static String of(MaterialCut cut, SheetLayout sheet, String title) {
        return new SheetDrawing(cut, sheet).draw(title);
    }

    private String draw(String title) {
        double wide = width + 2 * margin;
        double high = height + 2 * margin;
        svg.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n").append(String.format(Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%smm\" height=\"%smm\" viewBox=\"0 0 %s %s\""
                        + " font-family=\"sans-serif\" font-size=\"%s\" stroke-width=\"%s\">%n",
                mm(wide), mm(high), mm(wide), mm(high), mm(text), mm(text / 20)).replace("\r", ""));
        svg.append("<title>").append(Markup.escaped(title)).append("</title>\n");
        svg.append("<rect width=\"100%\" height=\"100%\" fill=\"white\"/>\n");
        rectangle(0, 0, width, height, "none");
        Map<String, CutPiece> pieces = cut.byName();
        for (Placement placement : sheet.placements()) {
            piece(new Lying(pieces.get(placement.piece()), placement));
        }
        chains();
        words(0, height + text * 4, "start",
                title + ", " + size() + "; cut-outs from the lower left corner of their piece");
        ruler();
        return svg.append("</svg>\n").toString();
    }

    private String size() {
        return CutWords.isRoll(sheet.stock())
                ? mm(width) + " mm wide, " + mm(height) + " mm of its length" : mm(width) + " × " + mm(height) + " mm";
    }

    private void piece(Lying lying) {
        String path = lying.outlines().stream().map(this::outline).collect(Collectors.joining(" "));
        svg.append("<path d=\"").append(path).append("\" fill=\"#eef1f4\" fill-rule=\"evenodd\" stroke=\"black\"/>\n");
        lying.cutOuts().forEach(c -> cutOut(lying.placement(), c));
        Placement p = lying.placement();
        Point middle = lying.middle();
        List<String> lines = List.of(lying.piece().number(), lying.piece().place().panel(),
                mm(p.width() / TENTHS) + " × " + mm(p.height() / TENTHS));
        double longest = lines.stream().mapToInt(String::length).max().orElse(0) * text * LETTER;
        boolean upright = longest > p.width() / TENTHS && p.height() > p.width();
        svg.append(String.format(Locale.ROOT, "<g transform=\"translate(%s %s)%s\">%n", mm(margin + middle.right()),
                mm(margin + height - middle.up()), upright ? " rotate(-90)" : "").replace("\r", ""));
        for (int i = 0; i < lines.size(); i++) {
            line(0, (i - 0.7) * text * 1.2, "middle", lines.get(i));
        }
        svg.append("</g>\n");
    }

    private String outline(List<Point> points) {
        return points.stream().map(p -> mm(margin + p.right()) + " " + mm(margin + height - p.up()))
                .collect(Collectors.joining(" L ", "M ", " Z"));
    }

    /** A cross in its middle and how far that is from the piece's lower left corner, where it lies on the piece. */
    private void cutOut(Placement p, CutOut c) {
        double right = c.middle().right() - p.x() / TENTHS;
        double up = c.middle().up() - p.y() / TENTHS;
        if (right < 0 || up < 0 || right > p.width() / TENTHS || up > p.height() / TENTHS) {
            return;
        }
        double x = c.middle().right();
        double y = c.middle().up();
        stroke(x - text / 2, y, x + text / 2, y);
        stroke(x, y - text / 2, x, y + text / 2);
        String size = c.clearing().round() ? "round " + mm(c.width()) : mm(c.width()) + " × " + mm(c.height());
        words(x + c.width() / 2 + text / 3, y - text * 0.35, "start", size + " at " + mm(right) + ", " + mm(up));
    }

    /** All left and right edges along the bottom, all lower and upper ones along the left side. */
    private void chains() {
        for (int x : edges(Placement::x, Placement::right, sheet.stock().width())) {
            stroke(x / TENTHS, 0, x / TENTHS, -text);
            turned(x / TENTHS, -text * 1.3, "end", mm(x / TENTHS));
        }
        for (int y : edges(Placement::y, Placement::top, SheetSketch.height(sheet))) {
            stroke(0, y / TENTHS, -text, y / TENTHS);
            words(-text * 1.3, y / TENTHS - text * 0.35, "end", mm(y / TENTHS));
        }
    }

    private TreeSet<Integer> edges(ToIntFunction<Placement> from, ToIntFunction<Placement> to, int end) {
        TreeSet<Integer> edges = new TreeSet<>(List.of(0, end));
        sheet.placements().forEach(p -> edges.addAll(List.of(from.applyAsInt(p), to.applyAsInt(p))));
        return edges;
    }

    private void ruler() {
        double y = height + text * 2;
        stroke(0, y, RULER, y);
        stroke(0, y - text / 2, 0, y + text / 2);
        stroke(RULER, y - text / 2, RULER, y + text / 2);
        words(RULER + text, y - text * 0.35, "start", RULER + " mm when printed at full size");
    }

    private void rectangle(double left, double low, double wide, double high, String fill) {
        svg.append(String.format(Locale.ROOT, "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"%s\""
                + " stroke=\"black\"/>\n", mm(margin + left), mm(margin + height - low - high), mm(wide), mm(high),
                fill));
    }

    private void stroke(double x1, double y1, double x2, double y2) {
        svg.append(String.format(Locale.ROOT, "<line x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\" stroke=\"black\"/>\n",
                mm(margin + x1), mm(margin + height - y1), mm(margin + x2), mm(margin + height - y2)));
    }

    private void words(double x, double y, String anchor, String words) {
        line(margin + x, margin + height - y, anchor, words);
    }

    private void turned(double x, double y, String anchor, String words) {
        svg.append(String.format(Locale.ROOT, "<g transform=\"translate(%s %s) rotate(-90)\">\n",
                mm(margin + x + text * 0.35), mm(margin + height - y)));
        line(0, 0, anchor, words);
        svg.append("</g>\n");
    }

    private void line(double x, double y, String anchor, String words) {
        svg.append(String.format(Locale.ROOT, "<text x=\"%s\" y=\"%s\" text-anchor=\"%s\">%s</text>\n", mm(x), mm(y),
                anchor, Markup.escaped(words)));
    }

    private static String mm(double length) {
        return String.format(Locale.ROOT, "%.2f", length).replaceAll("\\.?0+$", "");
    }
}
