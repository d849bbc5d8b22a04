package unthrum.physics;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Rows of a reference table in the test resources; lines that open with # name its source. */
public final class ReferenceTable {

    private static final String COMMA_OUTSIDE_QUOTES = ",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)";

    private ReferenceTable() {}

    /** One row, cells by the name of their column. */
    public record Row(Map<String, String> cells) {

        public String text(String column) {
            return cells.get(column);
        }

        public boolean has(String column) {
            return !cells.get(column).isEmpty();
        }

        /** The number in a column; an empty cell counts as 0. */
        public double number(String column) {
            return has(column) ? Double.parseDouble(cells.get(column)) : 0;
        }

        @Override
        public String toString() {
            return String.join(" ", cells.values().stream().limit(8).toList());
        }
    }

    public static List<Row> rows(String file) {
        List<Row> rows = new ArrayList<>();
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                ReferenceTable.class.getResourceAsStream(file), StandardCharsets.UTF_8))) {
            List<String> lines = reader.lines().filter(line -> !line.startsWith("#")).toList();
            String[] header = lines.get(0).split(",");
            for (String line : lines.subList(1, lines.size())) {
                String[] values = line.split(COMMA_OUTSIDE_QUOTES, -1);
                Map<String, String> cells = new LinkedHashMap<>();
                for (int i = 0; i < header.length; i++) {
                    cells.put(header[i], values[i]);
                }
                rows.add(new Row(cells));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }

    static Stream<Row> panels(String family) {
        return rows("panels.csv").stream().filter(row -> row.text("family").equals(family));
    }

    static Sheet sheet(Row row) {
        return new Sheet(
                row.number("E"), row.number("nu"), row.number("rho"), row.number("thickness_mm") / 1000);
    }

    static Bay bay(Row row) {
        return new Bay(
                row.number("a_mm") / 1000,
                row.number("b_mm") / 1000,
                row.has("Rx_m") ? 1 / row.number("Rx_m") : 0,
                row.has("Ry_m") ? 1 / row.number("Ry_m") : 0);
    }

    static Support support(Row row) {
        String edges = row.text("boundary").equals("CCCC") ? "CLAMPED" : "HINGED";
        return Support.valueOf(edges + (row.text("inplane").equals("FIX") ? "_FIXED" : "_SLIDING"));
    }
}
