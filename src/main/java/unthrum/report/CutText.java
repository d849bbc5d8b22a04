package unthrum.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import unthrum.cutting.CutRule;
import unthrum.cutting.Placement;
import unthrum.cutting.SheetLayout;
import unthrum.cutting.Stock;
import unthrum.pieces.CutPiece;
import unthrum.pieces.CutPlan;
import unthrum.pieces.Lying;
import unthrum.pieces.MaterialCut;
import unthrum.reasoning.engine.Judgement;
import unthrum.report.Page.Align;
import unthrum.report.Page.Column;
import unthrum.report.Page.Row;

/** The cutting of a vehicle as text: what does not come out, the pieces, each sheet in a sketch, and the shopping. */
public final class CutText {

    private static final int LABELS = 6;
    private static final int CARE = 12;
    /** A sketch wider than this helps nobody. */
    private static final int WIDEST = 100;

    private final CutPlan plan;
    private final Page page;
    private final Sentences anywhere = new Sentences(PlaceNames.anywhere());

    private CutText(CutPlan plan, Page page) {
        this.plan = plan;
        this.page = page;
    }

    public static String of(CutPlan plan, int width, Style style) {
        Page page = new Page(width, style);
        new CutText(plan, page).print();
        return page.toString();
    }

    private void print() {
        head();
        if (plan.cuts().isEmpty()) {
            new NothingToCut(plan.plan()).print(page);
            return;
        }
        shortfalls();
        pieces();
        onSite();
        cautions();
        page.heading("Sheet by sheet");
        page.paragraph(0, "Measured from the lower left corner, right and then up, with the face up that looks at you"
                + " when it is laid. A piece with a cut-out lies in the rectangle around it." + SheetSketch.SIGNS);
        page.blank();
        plan.cuts().forEach(this::layout);
        new CutShoppingText(plan).print(page);
    }

    private void head() {
        page.title("Cutting: " + plan.plan().survey().survey());
        int pieces = plan.cuts().stream().mapToInt(c -> c.pieces().size()).sum();
        if (pieces > 0) {
            page.paragraph(0, English.count(pieces, "piece") + " of " + English.count(plan.cuts().size(), "material")
                    + ", " + Amounts.mass(plan.mass()) + ", with " + (plan.wishes().cuts() == CutRule.GUILLOTINE
                    ? "cuts from edge to edge." : "cuts that may stop and turn."));
        }
        page.blank();
    }

    private void shortfalls() {
        if (!plan.shortfalls().isEmpty()) {
            page.heading("What cannot be cut");
            plan.shortfalls().forEach(s -> page.bullet(0, CutWords.shortfall(s, plan.plan().totals().currency())));
            page.blank();
        }
    }

    private void pieces() {
        page.heading("Pieces");
        List<Row> rows = inOrder().map(piece -> new Row(List.of(piece.number(), piece.place().panel(),
                CutWords.part(piece, plan.plan()), piece.material().material(),
                piece.box().length() + " × " + piece.box().width()))).toList();
        page.table(0, List.of(new Column("no.", Align.RIGHT), new Column("panel", Align.LEFT),
                new Column("part", Align.LEFT), new Column("material", Align.ELASTIC),
                new Column("along × across, mm", Align.RIGHT)), rows);
        page.blank();
        cutOuts();
    }

    private Stream<CutPiece> inOrder() {
        return CutWords.inOrder(plan.cuts().stream().flatMap(c -> c.pieces().stream()));
    }

    private void cutOuts() {
        Entries entries = new Entries();
        inOrder().forEach(piece -> {
            Stream.concat(CutWords.cutOuts(piece).stream(), CutWords.lines(piece).stream())
                    .forEach(words -> entries.add(piece.number(), English.sentence(English.capital(words))));
            if (piece.mirrored() && !piece.isPlain()) {
                entries.add(piece.number(), "Cut as the mirror image of the left one: along is counted from the other end.");
            }
        });
        if (!entries.isEmpty()) {
            page.paragraph(0, "Cut-outs, slits and folds, from the piece's own corner:");
            entries.print(page, 0, LABELS);
            page.blank();
        }
    }

    private void onSite() {
        if (plan.onSite().isEmpty()) {
            return;
        }
        page.heading("Cut on the vehicle");
        page.paragraph(0, "The survey gives no place for these. Hold the piece up, mark through and cut clear.");
        Map<String, List<String>> byPanel = new LinkedHashMap<>();
        plan.onSite().forEach(o -> byPanel.computeIfAbsent(o.place().panel(), k -> new ArrayList<>())
                .add((o.count() > 1 ? o.count() + " holes of " : "") + o.place().part()
                        + (Double.isNaN(o.clear()) ? " along its edge" : " " + Amounts.length(o.clear()) + " wide")
                        + switch (o.way()) {
                            case CLEAR -> "";
                            case LID -> " (what comes out is its loose lid)";
                            case KEYHOLE -> " (slit to it, cut no wider than what passes, and closed again)";
                        }));
        int column = byPanel.keySet().stream().mapToInt(String::length).max().orElse(0) + 2;
        byPanel.forEach((panel, words) -> page.entry(0, panel, column, English.sentence(String.join(", ", words))));
        page.blank();
    }

    /** What can hurt at the panels that get pieces. */
    private void cautions() {
        Set<String> panels = inOrder().map(p -> p.place().panel()).collect(Collectors.toSet());
        Entries entries = new Entries();
        Stream<Judgement> here = plan.plan().panels().stream().filter(p -> panels.contains(p.name()))
                .flatMap(p -> p.advice().cautions().stream());
        Told.of(Stream.concat(plan.plan().cautions().stream(), here), anywhere)
                .forEach(t -> entries.add("take care", t.advised(anywhere)));
        entries.print(page, 0, CARE);
        page.blank();
    }

    private void layout(MaterialCut cut) {
        String proved = cut.layout().provedLeast() ? " No layout takes less." : "";
        page.title(cut.material().material() + ": " + CutWords.used(cut));
        page.paragraph(0, "Waste " + Amounts.share(cut.waste()) + offcut(cut) + "." + proved);
        Map<String, CutPiece> pieces = cut.byName();
        List<SheetLayout> whole = cut.layout().sheets().stream().filter(s -> isWhole(s, pieces)).toList();
        if (!whole.isEmpty()) {
            page.paragraph(0, "Laid whole, uncut: " + whole.stream().map(s -> s.placements().get(0).piece())
                    .collect(Collectors.joining(", ")) + ".");
        }
        alike(cut).forEach(a -> sheets(a, pieces));
        page.blank();
    }

    private static String offcut(MaterialCut cut) {
        return cut.offcut() > 0 ? ", and an offcut of " + Amounts.area(cut.offcut()) + " is left" : "";
    }

    /** Whether a sheet is laid as it comes. */
    private static boolean isWhole(SheetLayout sheet, Map<String, CutPiece> pieces) {
        return sheet.placements().size() == 1 && sheet.pieceArea() == sheet.stock().area()
                && pieces.get(sheet.placements().get(0).piece()).isPlain();
    }

    /** The sheets that are cut alike, by their numbers in the order of cutting; whole ones are not drawn. */
    private static List<Map<Integer, SheetLayout>> alike(MaterialCut cut) {
        Map<List<Object>, Map<Integer, SheetLayout>> alike = new LinkedHashMap<>();
        Map<String, CutPiece> pieces = cut.byName();
        for (int i = 0; i < cut.layout().sheets().size(); i++) {
            SheetLayout sheet = cut.layout().sheets().get(i);
            if (!isWhole(sheet, pieces)) {
                alike.computeIfAbsent(shape(sheet, pieces), k -> new LinkedHashMap<>()).put(i + 1, sheet);
            }
        }
        return List.copyOf(alike.values());
    }

    private static List<Object> shape(SheetLayout sheet, Map<String, CutPiece> pieces) {
        List<Object> shape = new ArrayList<>(List.of(sheet.stock()));
        for (Placement p : sheet.placements()) {
            Lying lying = new Lying(pieces.get(p.piece()), p);
            shape.add(List.of(p.x(), p.y(), p.width(), p.height(), lying.outlines(),
                    lying.lines().stream().map(l -> List.of(l.line().kind(), l.from(), l.to())).toList()));
        }
        return shape;
    }

    private void sheets(Map<Integer, SheetLayout> alike, Map<String, CutPiece> pieces) {
        List<SheetLayout> sheets = List.copyOf(alike.values());
        SheetLayout first = sheets.get(0);
        page.blank();
        String names = English.andNumbered(alike.keySet().stream().map(n -> CutWords.sheet(first.stock(), n)).toList());
        String size = CutWords.isRoll(first.stock()) ? CutWords.tenths(first.stock().width()) + " mm wide, "
                + CutWords.tenths(first.usedHeight()) + " mm off it" : CutWords.size(first.stock());
        page.paragraph(0, English.capital(names) + ", " + size + ":");
        SheetSketch.lines(first, pieces, Math.min(page.width(), WIDEST)).forEach(page::verbatim);
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < first.placements().size(); i++) {
            int index = i;
            rows.add(row(first.placements().get(i), sheets.stream().map(s -> s.placements().get(index).piece())
                    .collect(Collectors.joining(", "))));
        }
        page.table(0, List.of(new Column("piece", Align.ELASTIC), new Column("right", Align.RIGHT),
                new Column("up", Align.RIGHT), new Column("wide × high, mm", Align.RIGHT)), rows);
    }

    private static Row row(Placement p, String pieces) {
        return new Row(List.of(pieces, CutWords.tenths(p.x()), CutWords.tenths(p.y()),
                CutWords.tenths(p.width()) + " × " + CutWords.tenths(p.height())));
    }
}
