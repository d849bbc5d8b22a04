package unthrum.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import unthrum.cutting.Placement;
import unthrum.cutting.SheetLayout;
import unthrum.pieces.Lying;
import unthrum.pieces.Lying.CutOut;
import unthrum.pieces.Lying.Drawn;
import unthrum.pieces.Lying.Point;
import unthrum.pieces.MaterialCut;

/** What the letters on a drawing stand for: cut-outs, slits, relief cuts and folds, with the measures to mark from. */
final class DrawingKey {

    private static final double TENTHS = 10;
    private static final int LETTERS = 26;

    /** One letter, and the spots on the sheet at which it stands. */
    record Entry(String letter, List<Point> spots, String words) {
    }

    private final List<Entry> entries = new ArrayList<>();

    private DrawingKey() {
    }

    static List<Entry> of(MaterialCut cut, SheetLayout sheet) {
        DrawingKey key = new DrawingKey();
        sheet.placements().forEach(p -> key.piece(new Lying(cut.byName().get(p.piece()), p)));
        return key.entries;
    }

    private void piece(Lying lying) {
        lying.cutOuts().forEach(c -> cutOut(lying, c));
        Map<List<Object>, List<Drawn>> alike = new LinkedHashMap<>();
        lying.lines().forEach(l -> alike.computeIfAbsent(List.of(words(l), isUpright(l)), k -> new ArrayList<>()).add(l));
        alike.values().forEach(lines -> add(lying, lines.stream().map(DrawingKey::middle).toList(), words(lines.get(0))
                + " at " + English.and(lines.stream().map(l -> at(lying.placement(), l)).distinct().toList())
                        + (isUpright(lines.get(0)) ? " right" : " up")));
    }

    /** Of a hatch whose middle lies off the piece the corners stand in the chains of measures. */
    private void cutOut(Lying lying, CutOut c) {
        Placement p = lying.placement();
        double right = c.middle().right() - p.x() / TENTHS;
        double up = c.middle().up() - p.y() / TENTHS;
        boolean onPiece = right >= 0 && up >= 0 && right <= p.width() / TENTHS && up <= p.height() / TENTHS;
        if (onPiece || c.clearing().round()) {
            String size = c.clearing().isKeyhole() ? "keyhole " + mm(c.width())
                    : c.clearing().round() ? "round " + mm(c.width()) : mm(c.width()) + " × " + mm(c.height());
            add(lying, List.of(new Point(within(c.middle().right(), p.x(), p.right()),
                    within(c.middle().up(), p.y(), p.top()))), size + " at " + mm(right) + ", " + mm(up));
        }
    }

    private static double within(double at, int from, int to) {
        return Math.max(from / TENTHS, Math.min(to / TENTHS, at));
    }

    private void add(Lying lying, List<Point> spots, String words) {
        int index = entries.size();
        String letter = String.valueOf((char) ('A' + index % LETTERS));
        entries.add(new Entry(index < LETTERS ? letter : letter + index / LETTERS, spots,
                lying.piece().number() + ": " + words));
    }

    /** 'relief cut 91 long'. */
    private static String words(Drawn drawn) {
        String length = " " + mm(drawn.line().length()) + " long";
        return switch (drawn.line().kind()) {
            case SLIT -> "slit" + length;
            case RELIEF -> "relief cut" + length;
            case FOLD -> "fold";
        };
    }

    private static String at(Placement p, Drawn drawn) {
        return mm(isUpright(drawn) ? drawn.from().right() - p.x() / TENTHS : drawn.from().up() - p.y() / TENTHS);
    }

    static boolean isUpright(Drawn drawn) {
        return Math.abs(drawn.to().up() - drawn.from().up()) > Math.abs(drawn.to().right() - drawn.from().right());
    }

    private static Point middle(Drawn drawn) {
        return new Point((drawn.from().right() + drawn.to().right()) / 2, (drawn.from().up() + drawn.to().up()) / 2);
    }

    private static String mm(double length) {
        return String.valueOf(Math.round(length));
    }
}
