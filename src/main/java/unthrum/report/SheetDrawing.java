package unthrum.report;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
    private static final int MARGIN = 8;
    private static final double LEAST_TEXT = 5;
    private static final double MOST_TEXT = 30;
    /** Text heights for each millimetre of the shorter side. */
    private static final double TEXT_SHARE = 1.0 / 36;
    /** The width of a letter against its height, for judging what fits. */
    private static final double LETTER = 0.6;
    /** A line to hold a ruler against, mm: a printer that shrinks the page shows at once. */
    private static final int RULER = 100;
    private static final double TENTHS = 10;
    /** Where two edges lie close, the second figure stands this much further out, in text heights. */
    private static final double FAR = 3.5;
    /** Letters of the words at a cut-out, about. */
    private static final int WORDS = 22;

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
        words(0, height + text * 4.6, "start", title + ", " + size());
        words(0, height + text * 3.2, "start", "Cut-outs from the lower left corner of their piece");
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

    /**
     * A cross in its middle and how far that is from the piece's lower left corner. Where the middle lies off the piece,
     * the words stand at its edge, and of a rectangle the corners stand in the chains.
     */
    private void cutOut(Placement p, CutOut c) {
        double x = c.middle().right();
        double y = c.middle().up();
        double onX = Math.max(p.x() / TENTHS, Math.min(p.right() / TENTHS, x));
        double onY = Math.max(p.y() / TENTHS, Math.min(p.top() / TENTHS, y));
        boolean onPiece = onX == x && onY == y;
        if (!onPiece && !c.clearing().round()) {
            return;
        }
        if (onPiece) {
            stroke(x - text / 2, y, x + text / 2, y);
            stroke(x, y - text / 2, x, y + text / 2);
        }
        String size = c.clearing().round() ? "round " + mm(c.width()) : mm(c.width()) + " × " + mm(c.height());
        boolean flip = onX + c.width() / 2 + text * WORDS * LETTER > width;
        words(onX + (flip ? -1 : 1) * (c.width() / 2 + text / 3), onY - text * 0.35, flip ? "end" : "start",
                size + " at " + mm(x - p.x() / TENTHS) + ", " + mm(y - p.y() / TENTHS));
    }

    /** All left and right edges along the bottom, all lower and upper ones along the left side. */
    private void chains() {
        double last = Double.NEGATIVE_INFINITY;
        double off = text;
        for (double x : edges(true)) {
            off = x - last < text && off == text ? FAR * text : text;
            stroke(x, 0, x, -off);
            turned(x, -off - text * 0.3, "end", mm(x));
            last = x;
        }
        last = Double.NEGATIVE_INFINITY;
        for (double y : edges(false)) {
            off = y - last < text && off == text ? FAR * text : text;
            stroke(0, y, -off, y);
            words(-off - text * 0.3, y - text * 0.35, "end", mm(y));
            last = y;
        }
    }

    /** The edges of the sheet, of its pieces, and of what is cut out of them in rectangles. */
    private TreeSet<Double> edges(boolean right) {
        TreeSet<Double> edges = new TreeSet<>(List.of(0.0, right ? width : height));
        Map<String, CutPiece> pieces = cut.byName();
        for (Placement p : sheet.placements()) {
            double from = (right ? p.x() : p.y()) / TENTHS;
            double to = (right ? p.right() : p.top()) / TENTHS;
            edges.addAll(List.of(from, to));
            for (CutOut c : new Lying(pieces.get(p.piece()), p).cutOuts()) {
                double middle = right ? c.middle().right() : c.middle().up();
                double half = (right ? c.width() : c.height()) / 2;
                Stream.of(middle - half, middle + half).filter(e -> !c.clearing().round() && e > from && e < to)
                        .map(e -> Math.round(e * TENTHS) / TENTHS).forEach(edges::add);
            }
        }
        return edges;
    }

    private void ruler() {
        double y = height + text * 1.8;
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
