package unthrum.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import unthrum.cutting.Placement;
import unthrum.cutting.Stock;
import unthrum.facts.Bay;
import unthrum.material.Layer;
import unthrum.material.Material.Form;
import unthrum.pieces.Clearing;
import unthrum.pieces.CutPiece;
import unthrum.pieces.Line;
import unthrum.pieces.Line.Kind;
import unthrum.pieces.MaterialCut;
import unthrum.pieces.Relief;
import unthrum.pieces.Shortfall;
import unthrum.plan.Plan;
import unthrum.reading.Words;

/** Pieces and sheets in words. */
final class CutWords {

    private CutWords() {
    }

    /** By number: 9, 10a, 10b, 10b1. */
    static Stream<CutPiece> inOrder(Stream<CutPiece> pieces) {
        return pieces.sorted(Comparator
                .comparingInt((CutPiece p) -> Integer.parseInt(p.number().replaceAll("[a-z].*", "")))
                .thenComparingInt(p -> p.number().length()).thenComparing(CutPiece::number));
    }

    /** '742 × 368 mm', along and across. */
    static String size(CutPiece piece) {
        return piece.box().length() + " × " + piece.box().width() + " mm";
    }

    static String size(Stock stock) {
        return tenths(stock.width()) + " × " + tenths(stock.height()) + " mm";
    }

    /** As it lies: right, then up. */
    static String size(Placement placement) {
        return tenths(placement.width()) + " × " + tenths(placement.height()) + " mm";
    }

    /** Tenths of a millimetre in millimetres. */
    static String tenths(int length) {
        return length % 10 == 0 ? String.valueOf(length / 10) : String.format(Locale.ROOT, "%.1f", length / 10.0);
    }

    /** 'bay 2'; a dash for the panel itself and for its only bay. */
    static String part(CutPiece piece, Plan plan) {
        long bays = plan.panel(piece.place().panel()).orElseThrow().advice().panel().facts().all(Bay.class).count();
        return piece.place().isWholePanel() || bays == 1 ? "–" : piece.place().part();
    }

    /** What is cut out of a piece, from its own corner: 'round 30 mm for drain 1, middle 120 mm along …'. */
    static List<String> cutOuts(CutPiece piece) {
        List<String> words = new ArrayList<>();
        for (Clearing c : piece.clearings()) {
            String what = c.round() ? "round " + Math.round(c.length()) + " mm"
                    : Math.round(c.length()) + " × " + Math.round(c.width()) + " mm";
            words.add((c.isKeyhole() ? "keyhole, " : "") + what + " for " + c.place().part() + ", middle "
                    + offset(along(piece, c.along()), piece.box().length(), "along") + " and "
                    + offset(c.across() - piece.box().across(), piece.box().width(), "across") + keeping(piece, c));
        }
        return words;
    }

    private static String offset(double at, int size, String way) {
        return Math.round(at < 0 ? -at : at > size ? at - size : at) + " mm "
                + (at < 0 ? "before the piece begins " : at > size ? "beyond the piece's end " : "") + way;
    }

    private static String keeping(CutPiece piece, Clearing c) {
        boolean whole = piece.box().alongEnd() >= c.along() + c.length() / 2
                && piece.box().along() <= c.along() - c.length() / 2 && piece.box().acrossEnd() >= c.across()
                + c.width() / 2 && piece.box().across() <= c.across() - c.width() / 2;
        return !c.isLid() ? "" : whole ? "; keep what comes out as its loose lid"
                : "; keep what comes out and tape it to the rest of the loose lid";
    }

    /** Slits, folds and relief cuts: 'slit to it from the edge, 80 mm long, at 120 mm along'. */
    static List<String> lines(CutPiece piece) {
        List<String> words = new ArrayList<>();
        for (Line line : piece.lines()) {
            boolean cornerCut = line.kind() == Kind.RELIEF && piece.relief().isEmpty();
            if (line.kind() == Kind.SLIT) {
                words.add("slit to the keyhole from the edge, " + run(line) + " at " + at(piece, line));
            } else if (line.kind() == Kind.FOLD) {
                words.add("bends over a fold at " + at(piece, line));
            } else if (cornerCut) {
                words.add("relief cut from the edge to the corner of the folds, " + run(line) + " at "
                        + at(piece, line) + "; one side laps over the other");
            }
        }
        piece.relief().ifPresent(r -> words.add(relief(piece, r)));
        return words;
    }

    private static String run(Line line) {
        return Math.round(line.length()) + " mm " + (line.runsAlong() ? "along" : "across");
    }

    /** Where a line lies, square to its run. */
    private static String at(CutPiece piece, Line line) {
        return line.runsAlong() ? Math.round(line.fromAcross() - piece.box().across()) + " mm across"
                : Math.round(along(piece, line.fromAlong())) + " mm along";
    }

    /** On metal that bulges both ways: limp sheet laps, soft stuff loses a wedge. */
    private static String relief(CutPiece piece, Relief relief) {
        Layer layer = piece.material().layer();
        boolean limp = layer == Layer.DAMPING || layer == Layer.BARRIER;
        return English.count(relief.aSide(), "relief cut") + " in each long side" + (relief.aSide() > 1
                ? ", evenly spaced" : ", in its middle") + ", " + relief.depth() + " mm deep: "
                + (limp ? "the edges lap by " + relief.lap() + " mm at the rim"
                : "take out a wedge " + relief.lap() + " mm wide at the rim");
    }

    /** Along the piece as it is cut: a mirrored one begins at its other end. */
    static double along(CutPiece piece, double onPanel) {
        double from = onPanel - piece.box().along();
        return piece.mirrored() ? piece.box().length() - from : from;
    }

    /** What fails, of which panels, and the nearest way out. */
    static String shortfall(Shortfall s, String currency) {
        String which = English.and(s.pieces().stream().map(p -> p.number() + " of " + p.place().panel() + " ("
                + size(p) + ")").toList());
        String pieces = (s.pieces().size() == 1 ? "Piece " : "Pieces ") + which;
        String material = s.material().material();
        if (s.tooLarge()) {
            return pieces + ": larger than any " + Words.of(s.material().form()) + " of " + material
                    + ", which is not joined. Nearest way out: order it to size, or take another material there.";
        }
        return pieces + ": no room on the " + material + " that is in stock and in the plan, and the client's money"
                + " buys no more, so the last in the plan's ranking goes without. Nearest way out: "
                + English.count(s.packs(), "pack") + " more for "
                + Amounts.money(s.price(), currency) + ", or leave out these " + Amounts.area(s.area()) + ".";
    }

    /** '11 sheets', '3.2 m off 1 roll and 1 offcut'. */
    static String used(MaterialCut cut) {
        List<String> words = new ArrayList<>();
        int whole = cut.bought() + cut.shelf();
        boolean roll = cut.material().form() == Form.ROLL;
        if (whole > 0) {
            words.add((roll ? metres(cut.rollLength()) + " off " : "") + English.count(whole, unit(cut)));
        }
        cut.layout().sheets().stream().filter(s -> s.stock().kind() == Stock.Kind.OFFCUT)
                .forEach(s -> words.add((roll ? metres(s.usedHeight() / 10_000.0) + " off " : "") + named(s.stock())));
        return words.isEmpty() ? "nothing" : English.and(words);
    }

    /** Whether it is a roll or the rest of one, of which a length is cut off. */
    static boolean isRoll(Stock stock) {
        return stock.kind() == Stock.Kind.ROLL || stock.name().equals("roll") || stock.name().startsWith("rest");
    }

    /** 'rest 1 of a roll', 'offcut 2'. */
    static String named(Stock stock) {
        return stock.name().startsWith("rest") ? stock.name() + " of a roll" : stock.name();
    }

    /** 'sheet 3'; an offcut goes by its own number. */
    static String sheet(Stock stock, int number) {
        return stock.kind() == Stock.Kind.OFFCUT ? named(stock) : stock.name() + " " + number;
    }

    static String metres(double metres) {
        return metres < 1 ? Amounts.length(metres) : String.format(Locale.ROOT, "%.2f m", metres);
    }

    static String unit(MaterialCut cut) {
        return Words.of(cut.material().form());
    }
}
