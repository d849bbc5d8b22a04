package unthrum.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import unthrum.facts.Rib;
import unthrum.reading.Words;
import unthrum.derive.BayGrid;
import unthrum.derive.PanelFacts;
import unthrum.survey.FixingKind;
import unthrum.survey.PanelEntry;
import unthrum.survey.Run;

/**
 * A small drawing of a panel in plain characters, to scale as far as those allow: its ribs, the numbers of its bays,
 * and the fixings whose places are known. Along the panel runs from left to right.
 */
final class PanelSketch {

    private static final int WIDEST = 48;
    private static final int TALLEST = 7;
    private static final int LEAST = 3;
    /** A character stands about twice as tall as it is wide. */
    private static final double TALL = 2;
    private static final char RIB = '#';
    private static final String FIXINGS = "ox*%@&";

    private final double length;
    private final double width;
    private final char[][] cells;
    private final Map<FixingKind, Character> signs = new LinkedHashMap<>();

    private PanelSketch(double length, double width, int room) {
        this.length = length;
        this.width = width;
        double unit = Math.max(length / Math.min(WIDEST, room), width / TALL / TALLEST);
        int columns = Math.max(LEAST, (int) Math.round(length / unit));
        int rows = Math.max(LEAST, (int) Math.round(width / TALL / unit));
        this.cells = new char[rows][columns];
        for (char[] row : cells) {
            Arrays.fill(row, ' ');
        }
    }

    /** The drawing line by line, with what its signs mean. */
    static List<String> of(PanelEntry panel, PanelFacts facts, int room) {
        PanelSketch sketch = new PanelSketch(panel.size().get(0).si(), panel.size().get(1).si(), room);
        List<Rib> ribs = facts.all(Rib.class).toList();
        ribs.forEach(sketch::rib);
        sketch.bays(BayGrid.of(sketch.length, sketch.width, ribs));
        panel.fixings().orElse(List.of()).forEach(sketch::fixing);
        return sketch.lines(!ribs.isEmpty());
    }

    private void rib(Rib rib) {
        boolean across = rib.runs() == Run.ACROSS;
        double start = rib.at() - rib.breadth() / 2;
        double end = rib.at() + rib.breadth() / 2;
        int from = across ? column(start) : row(start);
        int to = Math.max(from, (across ? column(end) : row(end)) - 1);
        for (int row = across ? 0 : from; row <= (across ? cells.length - 1 : to); row++) {
            Arrays.fill(cells[row], across ? from : 0, across ? to + 1 : cells[row].length, RIB);
        }
    }

    private void bays(BayGrid grid) {
        int number = 1;
        for (BayGrid.Span across : grid.alongWidth()) {
            for (BayGrid.Span along : grid.alongLength()) {
                String name = String.valueOf(number++);
                int column = column(along.from() + along.length() / 2);
                for (int i = 0; i < name.length() && column + i < cells[0].length; i++) {
                    cells[row(across.from() + across.length() / 2)][column + i] = name.charAt(i);
                }
            }
        }
    }

    private void fixing(PanelEntry.Fixing fixing) {
        fixing.at().ifPresent(at -> {
            int next = Math.min(signs.size(), FIXINGS.length() - 1);
            char sign = signs.computeIfAbsent(fixing.kind(), k -> FIXINGS.charAt(next));
            cells[row(at.get(1).si())][column(at.get(0).si())] = sign;
        });
    }

    private int column(double along) {
        return cell(along / length, cells[0].length);
    }

    private int row(double across) {
        return cell(across / width, cells.length);
    }

    private static int cell(double share, int cells) {
        return Math.max(0, Math.min((int) (share * cells), cells - 1));
    }

    private List<String> lines(boolean ribs) {
        List<String> lines = new ArrayList<>();
        String edge = "+" + "-".repeat(cells[0].length) + "+";
        lines.add(edge);
        for (char[] row : cells) {
            lines.add("|" + new String(row) + "|");
        }
        lines.add(edge);
        StringJoiner legend = new StringJoiner(", ");
        legend.add(ribs ? "1, 2 … bays" : "1 bay");
        if (ribs) {
            legend.add(RIB + " rib");
        }
        signs.forEach((kind, sign) -> legend.add(sign + " " + Words.of(kind)));
        lines.add(legend.toString());
        return lines;
    }
}
