package unthrum.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import unthrum.cutting.Placement;
import unthrum.cutting.SheetLayout;

/**
 * A sheet drawn in characters, its longer side lying down: every piece a frame with its number. A character is taken
 * to be twice as high as wide. True sizes stand in the drawings and in the table below the sketch.
 */
final class SheetSketch {

    private static final int MOST_ROWS = 10;
    private static final int LEAST_ROWS = 4;
    /** How much higher than wide a character is. */
    private static final double TALL = 2;

    private final SheetLayout sheet;
    private final boolean lying;
    private final int columns;
    private final int rows;
    private final char[][] cells;

    private SheetSketch(SheetLayout sheet, int width) {
        this.sheet = sheet;
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

    static List<String> lines(SheetLayout sheet, int width) {
        return new SheetSketch(sheet, width).draw();
    }

    private List<String> draw() {
        frame(0, 0, sheet.stock().width(), height(sheet), "");
        sheet.placements().forEach(p -> frame(p.x(), p.y(), p.right(), p.top(),
                p.piece().substring(0, p.piece().indexOf(' '))));
        List<String> lines = new ArrayList<>();
        for (int row = rows; row >= 0; row--) {
            lines.add(new String(cells[row]).stripTrailing());
        }
        return lines;
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
