package unthrum.cutting;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** One row of a benchmark file: a published instance in one variant, with its best known value. */
record PublishedInstance(String family, String name, String variant, CuttingTask task, int bestKnown, int lowerBound) {

    /** All rows of a file whose first line names the columns. */
    static List<PublishedInstance> read(Path file) {
        try {
            List<String> lines = Files.readAllLines(file);
            List<String> columns = List.of(lines.get(0).split(","));
            return lines.stream().skip(1).map(line -> of(columns, line.split(",", -1))).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static PublishedInstance of(List<String> columns, String[] row) {
        List<String> cells = Arrays.asList(row);
        String variant = cells.get(columns.indexOf("variant"));
        int width = number(columns, cells, "stock_width");
        boolean strip = cells.get(columns.indexOf("kind")).equals("strip");
        Stock stock = strip ? Stock.roll("roll", width)
            : Stock.unlimited("sheet", width, number(columns, cells, "stock_height"));
        CutRule cuts = variant.endsWith("G") ? CutRule.GUILLOTINE : CutRule.FREE;
        List<Piece> pieces = pieces(cells.get(cells.size() - 1), variant.startsWith("R"));
        return new PublishedInstance(cells.get(0), cells.get(1), variant,
            new CuttingTask(pieces, List.of(stock), cuts, 0), number(columns, cells, "best_known"),
            number(columns, cells, "lower_bound"));
    }

    private static int number(List<String> columns, List<String> cells, String column) {
        return Integer.parseInt(cells.get(columns.indexOf(column)));
    }

    private static List<Piece> pieces(String text, boolean mayTurn) {
        List<Piece> pieces = new ArrayList<>();
        for (String part : text.trim().split(" ")) {
            String[] n = part.split("[x*]");
            int count = n.length > 2 ? Integer.parseInt(n[2]) : 1;
            pieces.add(new Piece("p" + pieces.size(), Integer.parseInt(n[0]), Integer.parseInt(n[1]), count, mayTurn));
        }
        return pieces;
    }
}
