package unthrum.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import unthrum.cutting.Placement;
import unthrum.cutting.Stock;
import unthrum.material.Material.Form;
import unthrum.pieces.Clearing;
import unthrum.pieces.CutPiece;
import unthrum.pieces.MaterialCut;
import unthrum.reading.Words;

/** Pieces and sheets in words. */
final class CutWords {

    private CutWords() {
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

    /** 'bay 2', or nothing for the panel itself. */
    static String part(CutPiece piece) {
        return piece.place().part();
    }

    /** What is cut out of a piece, measured on it: 'hole of 30 mm for lining clip 1, middle 120 mm along, 40 mm across'. */
    static List<String> cutOuts(CutPiece piece) {
        List<String> words = new ArrayList<>();
        for (Clearing c : piece.clearings()) {
            String what = c.round() ? "round " + Math.round(c.length()) + " mm"
                    : Math.round(c.length()) + " × " + Math.round(c.width()) + " mm";
            words.add(what + " for " + c.place().part() + ", middle " + Math.round(along(piece, c.along()))
                    + " mm along and " + Math.round(c.across() - piece.box().across()) + " mm across"
                    + (c.lid() ? "; keep what comes out as its loose lid" : ""));
        }
        return words;
    }

    /** Along the piece as it is cut: a mirrored one begins at its other end. */
    static double along(CutPiece piece, double onPanel) {
        double from = onPanel - piece.box().along();
        return piece.mirrored() ? piece.box().length() - from : from;
    }

    /** '12 sheets of 500 × 300 mm', '3.2 m of a roll 1000 mm wide'. */
    static String used(MaterialCut cut) {
        List<String> words = new ArrayList<>();
        long offcuts = cut.layout().sheets().stream().filter(s -> s.stock().kind() == Stock.Kind.OFFCUT).count();
        if (cut.material().form() == Form.ROLL && cut.bought() + cut.shelf() > 0 || cut.layout().task().fromRoll()) {
            words.add(Amounts.length(cut.rollLength()) + " off " + English.count(cut.bought() + cut.shelf(), "roll"));
        } else if (cut.bought() + cut.shelf() > 0) {
            words.add(English.count(cut.bought() + cut.shelf(), unit(cut)));
        }
        if (offcuts > 0) {
            words.add(English.count((int) offcuts, "offcut"));
        }
        return words.isEmpty() ? "nothing" : English.and(words);
    }

    static String unit(MaterialCut cut) {
        return Words.of(cut.material().form());
    }
}
