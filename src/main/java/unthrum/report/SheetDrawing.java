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
import unthrum.pieces.Lying.Drawn;
import unthrum.pieces.Lying.Point;
import unthrum.pieces.MaterialCut;

/**
 * One sheet as an SVG drawing in true scale: a user unit is a millimetre. Every piece with its outline, number, panel
 * and size; chains of dimensions along two edges to mark from; a letter at every cut-out, slit, relief cut and fold,
 * and below the sheet what the letters stand for.
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
    private static final double LINE = 1.3;
    /** Lines of the label of a piece. */
    private static final int LABEL = 3;

    private final MaterialCut cut;
    private final SheetLayout sheet;
    private final double width;
    private final double height;
    private final double text;
    private final double margin;
    private final List<DrawingKey.Entry> key;
    private final StringBuilder svg = new StringBuilder();

    private SheetDrawing(MaterialCut cut, SheetLayout sheet) {
        this.cut = cut;
        this.sheet = sheet;
        this.width = sheet.stock().width() / TENTHS;
        this.height = SheetSketch.height(sheet) / TENTHS;
        this.text = Math.max(LEAST_TEXT, Math.min(MOST_TEXT, Math.min(width, height) * TEXT_SHARE));
        this.margin = MARGIN * text;
        this.key = DrawingKey.of(cut, sheet);
    }

    /** @param title what the sheet is, such as 'Sheet 3 of butyl-2' */
    static String of(MaterialCut cut, SheetLayout sheet, String title) {
        return new SheetDrawing(cut, sheet).draw(title);
    }

    private String draw(String title) {
        double wide = width + 2 * margin;
        double high = height + 2 * margin + key.size() * LINE * text;
        svg.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n").append(String.format(Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%smm\" height=\"%smm\" viewBox=\"0 0 %s %s\""
                        + " font-family=\"sans-serif\" font-size=\"%s\" stroke-width=\"%s\">%n",
                mm(wide), mm(high), mm(wide), mm(high), mm(text), mm(text / 20)).replace("\r", ""));
        svg.append("<title>").append(Markup.escaped(title)).append("</title>\n");
        svg.append("<rect width=\"100%\" height=\"100%\" fill=\"white\"/>\n");
        rectangle(0, 0, width, height, "none");
        Map<String, CutPiece> pieces = cut.byName();
        List<Lying> lying = sheet.placements().stream().map(p -> new Lying(pieces.get(p.piece()), p)).toList();
        lying.forEach(this::outlines);
        lying.forEach(this::marks);
        lying.forEach(this::label);
        key();
        chains();
        words(0, height + text * 4.6, "start", title + ", " + size());
        words(0, height + text * 3.2, "start", key.isEmpty() ? "All measures in mm"
                : "All measures in mm; those of letters from the lower left corner of their piece");
        ruler();
        return svg.append("</svg>\n").toString();
    }

    private String size() {
        return CutWords.isRoll(sheet.stock())
                ? mm(width) + " mm wide, " + mm(height) + " mm of its length" : mm(width) + " × " + mm(height) + " mm";
    }

    private void outlines(Lying lying) {
        String path = lying.outlines().stream().map(this::outline).collect(Collectors.joining(" "));
        svg.append("<path d=\"").append(path).append("\" fill=\"#eef1f4\" fill-rule=\"evenodd\" stroke=\"black\"/>\n");
    }

    /** Slits and relief cuts in full, folds dashed, and a cross in the middle of what is cut out. */
    private void marks(Lying lying) {
        for (Drawn l : lying.lines()) {
            stroke(l.from().right(), l.from().up(), l.to().right(), l.to().up(),
                    l.line().isCut() ? "" : " stroke-dasharray=\"" + mm(text) + "\"");
        }
        Placement p = lying.placement();
        for (CutOut c : lying.cutOuts()) {
            double x = c.middle().right();
            double y = c.middle().up();
            if (x > p.x() / TENTHS && x < p.right() / TENTHS && y > p.y() / TENTHS && y < p.top() / TENTHS) {
                stroke(x - text / 2, y, x + text / 2, y);
                stroke(x, y - text / 2, x, y + text / 2);
            }
        }
    }

    /** Number, panel and size, one below the other where there is room, else in one line. */
    private void label(Lying lying) {
        Placement p = lying.placement();
        List<String> lines = List.of(lying.piece().number(), lying.piece().place().panel(),
                mm(p.width() / TENTHS) + " × " + mm(p.height() / TENTHS));
        boolean flat = Math.min(p.width(), p.height()) / TENTHS < LABEL * LINE * text;
        double longest = text * LETTER * (flat ? String.join(" ", lines).length()
                : lines.stream().mapToInt(String::length).max().orElse(0));
        boolean upright = longest > p.width() / TENTHS && p.height() > p.width();
        Point middle = lying.middle();
        svg.append(String.format(Locale.ROOT, "<g transform=\"translate(%s %s)%s\">\n", mm(margin + middle.right()),
                mm(margin + height - middle.up()), upright ? " rotate(-90)" : ""));
        if (flat) {
            svg.append(String.format(Locale.ROOT, "<text y=\"%s\" text-anchor=\"middle\">%s</text>\n", mm(text * 0.35),
                    lines.stream().map(l -> "<tspan>" + Markup.escaped(l) + "</tspan>")
                            .collect(Collectors.joining(" "))));
        }
        for (int i = 0; i < lines.size() && !flat; i++) {
            line(0, (i - 0.7) * text * 1.2, "middle", lines.get(i));
        }
        svg.append("</g>\n");
    }

    /** The letters where they belong, and what they stand for. */
    private void key() {
        for (int i = 0; i < key.size(); i++) {
            DrawingKey.Entry entry = key.get(i);
            entry.spots().forEach(at -> words(at.right() + text * 0.4, at.up() + text * 0.4, "start", entry.letter()));
            words(0, -margin * 0.8 - i * LINE * text, "start", entry.letter() + "  " + entry.words());
        }
    }

    private String outline(List<Point> points) {
        return points.stream().map(p -> mm(margin + p.right()) + " " + mm(margin + height - p.up()))
                .collect(Collectors.joining(" L ", "M ", " Z"));
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
        stroke(x1, y1, x2, y2, "");
    }

    private void stroke(double x1, double y1, double x2, double y2, String how) {
        svg.append(String.format(Locale.ROOT, "<line x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\" stroke=\"black\"%s/>\n",
                mm(margin + x1), mm(margin + height - y1), mm(margin + x2), mm(margin + height - y2), how));
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
