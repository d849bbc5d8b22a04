package unthrum.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import unthrum.cutting.Placement;
import unthrum.cutting.SheetLayout;
import unthrum.pieces.CutPiece;
import unthrum.pieces.Lying;
import unthrum.pieces.Lying.CutOut;
import unthrum.pieces.Lying.Point;

/**
 * A sheet drawn in characters, its longer side lying down: every piece a frame with its number. A character is taken
 * to be twice as high as wide. True sizes stand in the drawings and in the table below the sketch.
 */
final class SheetSketch {

    private static final int MOST_ROWS = 10;
    private static final int LEAST_ROWS = 4;
    /** How much higher than wide a character is. */
    private static final double TALL = 2;
    private static final int TENTHS = 10;
    /** Lines across a hatch: more than the sketch has rows. */
    private static final int ACROSS_HATCH = 20;
    /** What is drawn on a piece besides its number. */
    static final String SIGNS = " In the sketches o and # are cut out, / is a slit or a relief cut, and : a fold.";

    private final SheetLayout sheet;
    private final Map<String, CutPiece> pieces;
    private final boolean lying;
    private final int columns;
    private final int rows;
    private final char[][] cells;

    private SheetSketch(SheetLayout sheet, Map<String, CutPiece> pieces, int width) {
        this.sheet = sheet;
        this.pieces = pieces;
        int high = height(sheet);
        this.lying = high > sheet.stock().width();
        double across = lying ? high : sheet.stock().width();
        double up = lying ? sheet.stock().width() : high;
        double scale = Math.min((width - 1) / across, MOST_ROWS * TALL / up);
        this.columns = Math.max(2, (int) Math.round(across * scale));
        this.rows = Math.max(LEAST_ROWS, (int) Math.round(up * scale / TALL));
        this.cells = new char[rows + 1][columns + 1];
        Arrays.stream(cells).forEach(line -> Arrays.fill(line, ' '));
    }

    /** Of a roll only the used end is drawn. */
    static int height(SheetLayout sheet) {
        return CutWords.isRoll(sheet.stock()) ? Math.max(sheet.usedHeight(), 1) : sheet.stock().height();
    }

    static List<String> lines(SheetLayout sheet, Map<String, CutPiece> pieces, int width) {
        return new SheetSketch(sheet, pieces, width).draw();
    }

    private List<String> draw() {
        frame(0, 0, sheet.stock().width(), height(sheet), "");
        sheet.placements().forEach(p -> frame(p.x(), p.y(), p.right(), p.top(),
                p.piece().substring(0, p.piece().indexOf(' '))));
        sheet.placements().forEach(p -> marks(new Lying(pieces.get(p.piece()), p)));
        List<String> lines = new ArrayList<>();
        for (int row = rows; row >= 0; row--) {
            lines.add(new String(cells[row]).stripTrailing());
        }
        return lines;
    }

    private void marks(Lying lying) {
        for (CutOut c : lying.cutOuts()) {
            double half = c.width() / 2;
            double tall = c.height() / 2;
            Point m = c.middle();
            if (c.clearing().round()) {
                mark(m.right(), m.up(), m.right(), m.up(), 'o');
            } else {
                for (double up = m.up() - tall; up <= m.up() + tall; up += 1 + tall / ACROSS_HATCH) {
                    mark(m.right() - half, up, m.right() + half, up, '#');
                }
            }
        }
        lying.lines().forEach(l -> mark(l.from().right(), l.from().up(), l.to().right(), l.to().up(),
                l.line().isCut() ? '/' : ':'));
    }

    /** A line of signs between two points in mm, where nothing is drawn yet. */
    private void mark(double fromRight, double fromUp, double toRight, double toUp, char sign) {
        int steps = columns + rows;
        for (int i = 0; i <= steps; i++) {
            int right = (int) Math.round((fromRight + (toRight - fromRight) * i / steps) * TENTHS);
            int up = (int) Math.round((fromUp + (toUp - fromUp) * i / steps) * TENTHS);
            int row = row(lying ? sheet.stock().width() - right : up);
            int column = column(lying ? up : right);
            if (row >= 0 && row <= rows && column >= 0 && column <= columns && cells[row][column] == ' ') {
                cells[row][column] = sign;
            }
        }
    }

    private void frame(int left, int low, int right, int high, String label) {
        int x1 = column(lying ? low : left);
        int x2 = column(lying ? high : right);
        int y1 = row(lying ? sheet.stock().width() - right : low);
        int y2 = row(lying ? sheet.stock().width() - left : high);
        for (int x = x1; x <= x2; x++) {
            line(y1, x, '-');
            line(y2, x, '-');
        }
        for (int y = y1; y <= y2; y++) {
            line(y, x1, '|');
            line(y, x2, '|');
        }
        for (int y : new int[] {y1, y2}) {
            cells[y][x1] = '+';
            cells[y][x2] = '+';
        }
        int room = x2 - x1 - 1;
        for (int i = 0; i < Math.min(label.length(), room) && y2 - y1 > 1; i++) {
            cells[(y1 + y2) / 2][x1 + 1 + (room - Math.min(label.length(), room)) / 2 + i] = label.charAt(i);
        }
    }

    private void line(int row, int column, char stroke) {
        char there = cells[row][column];
        cells[row][column] = there == ' ' || there == stroke ? stroke : '+';
    }

    private int column(int at) {
        double across = lying ? height(sheet) : sheet.stock().width();
        return (int) Math.round(at / across * columns);
    }

    private int row(int at) {
        double up = lying ? sheet.stock().width() : height(sheet);
        return (int) Math.round(at / up * rows);
    }
}
