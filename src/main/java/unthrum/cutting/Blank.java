package unthrum.cutting;

import java.util.ArrayList;
import java.util.List;

/** One copy of a piece as the search sees it: its knife margin is part of its size. */
record Blank(int piece, int width, int height, boolean mayTurn) {

    long area() {
        return (long) width * height;
    }

    boolean fitsInto(int sheetWidth, int sheetHeight) {
        return width <= sheetWidth && height <= sheetHeight
            || mayTurn && height <= sheetWidth && width <= sheetHeight;
    }

    /** All copies of all pieces that fit into some stock, in the order of the task. */
    static List<Blank> of(CuttingTask task) {
        List<Piece> tooLarge = task.tooLarge();
        List<Blank> blanks = new ArrayList<>();
        for (int i = 0; i < task.pieces().size(); i++) {
            Piece piece = task.pieces().get(i);
            if (tooLarge.contains(piece)) {
                continue;
            }
            Blank blank = new Blank(i, piece.width() + task.knifeMargin(), piece.height() + task.knifeMargin(),
                piece.mayTurn() && piece.width() != piece.height());
            for (int copy = 0; copy < piece.count(); copy++) {
                blanks.add(blank);
            }
        }
        return blanks;
    }
}
