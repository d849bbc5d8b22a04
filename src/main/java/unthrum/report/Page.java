package unthrum.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;

/** A sheet of text of a given width: headings, wrapped paragraphs, labelled entries and tables, one below the other. */
final class Page {

    private static final Pattern IDS = Pattern.compile("\\[[a-z]+/[^\\]]*]");

    private static final int NARROWEST = 12;

    private final int width;
    private final Style style;
    private final StringBuilder text = new StringBuilder();

    Page(int width, Style style) {
        this.width = width;
        this.style = style;
    }

    Style style() {
        return style;
    }

    int width() {
        return width;
    }

    void blank() {
        text.append('\n');
    }

    /** A section's title with a line under it. */
    void heading(String title) {
        for (String line : Wrap.lines(style.spell(title), width)) {
            text.append(style.heading(line)).append('\n');
        }
        text.append(style.rule(Math.min(width, 100))).append('\n');
    }

    void title(String title) {
        lines(0, title, style::heading);
    }

    void paragraph(int indent, String words) {
        lines(indent, words, this::aside);
    }

    /** A paragraph that hangs from a dash. */
    void bullet(int indent, String words) {
        entry(indent, "-", 2, words);
    }

    /** A line as it stands, however long. */
    void verbatim(String line) {
        text.append(style.spell(line)).append('\n');
    }

    private void lines(int indent, String words, UnaryOperator<String> dress) {
        for (String line : Wrap.lines(style.spell(words), width - indent)) {
            text.append(" ".repeat(indent)).append(dress.apply(line)).append('\n');
        }
    }

    /** A labelled paragraph: the label in a column of its own, the text hanging beside it. */
    void entry(int indent, String label, int column, String words) {
        String lead = style.spell(label);
        for (String line : Wrap.lines(style.spell(words), width - indent - column)) {
            String padded = Wrap.pad(lead, column);
            text.append(" ".repeat(indent)).append(style.label(padded)).append(aside(line)).append('\n');
            lead = "";
        }
    }

    /** How a column of a table stands; elastic ones wrap in the room that the others leave. */
    enum Align { LEFT, RIGHT, ELASTIC }

    record Column(String head, Align align) {
    }

    /** @param dress how the row's first line is dressed */
    record Row(List<String> cells, UnaryOperator<String> dress) {
        Row(List<String> cells) {
            this(cells, UnaryOperator.identity());
        }
    }

    /** Rows of cells under their heads. */
    void table(int indent, List<Column> columns, List<Row> rows) {
        List<Row> all = new ArrayList<>();
        all.add(new Row(columns.stream().map(Column::head).toList(), style::heading));
        all.addAll(rows);
        rows(indent, columns, all);
    }

    /** Rows of cells in columns without heads. */
    void rows(int indent, List<Column> columns, List<Row> rows) {
        int[] widths = widths(indent, columns, rows);
        rows.forEach(row -> row(indent, row, columns, widths));
    }

    private int[] widths(int indent, List<Column> columns, List<Row> rows) {
        int[] widths = new int[columns.size()];
        int room = width - indent - 2 * (columns.size() - 1);
        List<Integer> elastic = new ArrayList<>();
        for (int i = 0; i < widths.length; i++) {
            int column = i;
            widths[i] = rows.stream().mapToInt(r -> style.spell(r.cells().get(column)).length()).max().orElse(0);
            if (columns.get(i).align() == Align.ELASTIC) {
                elastic.add(i);
            } else {
                room -= widths[i];
            }
        }
        elastic.sort(Comparator.comparingInt(i -> widths[i]));
        for (int done = 0; done < elastic.size(); done++) {
            int i = elastic.get(done);
            widths[i] = Math.max(NARROWEST, Math.min(widths[i], room / (elastic.size() - done)));
            room -= widths[i];
        }
        return widths;
    }

    private void row(int indent, Row row, List<Column> columns, int[] widths) {
        List<List<String>> wrapped = new ArrayList<>();
        for (int i = 0; i < widths.length; i++) {
            wrapped.add(Wrap.lines(style.spell(row.cells().get(i)), widths[i]));
        }
        int height = wrapped.stream().mapToInt(List::size).max().orElse(0);
        for (int line = 0; line < height; line++) {
            StringBuilder out = new StringBuilder(" ".repeat(indent));
            for (int i = 0; i < widths.length; i++) {
                String cell = line < wrapped.get(i).size() ? wrapped.get(i).get(line) : "";
                boolean right = columns.get(i).align() == Align.RIGHT;
                out.append(i == 0 ? "" : "  ")
                        .append(right ? Wrap.padLeft(cell, widths[i]) : Wrap.pad(cell, widths[i]));
            }
            String done = out.toString().stripTrailing();
            text.append(line == 0 ? row.dress().apply(done) : done).append('\n');
        }
    }

    private String aside(String line) {
        return style.colour() ? IDS.matcher(line).replaceAll(m -> style.aside(m.group())) : line;
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
