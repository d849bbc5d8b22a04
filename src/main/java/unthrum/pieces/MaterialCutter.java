package unthrum.pieces;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import unthrum.cutting.CuttingLayout;
import unthrum.cutting.CuttingTask;
import unthrum.cutting.LayoutPlanner;
import unthrum.cutting.Piece;
import unthrum.cutting.Search;
import unthrum.cutting.Stock;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.material.Material.Form;

/** Lays the pieces of one material out on what there is of it. */
final class MaterialCutter {

    /** So often a piece that finds no room is cut in two and tried again. */
    private static final int HALVINGS = 3;

    private final OnHand onHand;
    private final Material material;
    private final Wishes wishes;
    private final int gap;
    private final Search search;

    MaterialCutter(OnHand onHand, Wishes wishes, int gap, Search search) {
        this.onHand = onHand;
        this.material = onHand.material();
        this.wishes = wishes;
        this.gap = gap;
        this.search = search;
    }

    /**
     * With so many bought at most. A piece for which no room is left is made of two, joined once more, and those of two
     * again. A damping patch keeps the parts that find room; of any other layer a part is of no use without the rest.
     */
    MaterialCut cut(List<CutPiece> pieces, int bought) {
        MaterialCut whole = lay(pieces, bought);
        MaterialCut cut = whole;
        for (int i = 0; i < HALVINGS && SheetSize.isJoinable(material) && !cut.unplaced().isEmpty(); i++) {
            Set<CutPiece> without = Set.copyOf(cut.unplaced());
            List<CutPiece> smaller = new ArrayList<>();
            for (CutPiece piece : cut.pieces()) {
                smaller.addAll(without.contains(piece) ? halves(piece) : List.of(piece));
            }
            if (smaller.size() == cut.pieces().size()) {
                break;
            }
            cut = lay(smaller, bought);
        }
        MaterialCut sound = material.layer() == Layer.DAMPING ? cut : lay(undone(pieces, cut), bought);
        return sound.area() > whole.area() ? sound : whole;
    }

    /** The pieces with those whole again of which a part finds no room. */
    private static List<CutPiece> undone(List<CutPiece> pieces, MaterialCut cut) {
        List<CutPiece> missing = cut.unplaced();
        List<CutPiece> undone = new ArrayList<>();
        for (CutPiece piece : pieces) {
            undone.addAll(missing.stream().anyMatch(m -> m.isPartOf(piece)) ? List.of(piece)
                    : cut.pieces().stream().filter(p -> p.isPartOf(piece)).toList());
        }
        return undone;
    }

    private static List<CutPiece> halves(CutPiece piece) {
        List<CutPiece> halves = new ArrayList<>();
        for (Box half : new Joints(piece.face().ground(), Parting.FEWEST_PIECES).halves(piece.box())) {
            Geometry part = piece.shape().intersection(half.shape());
            for (int i = 0; i < part.getNumGeometries(); i++) {
                if (part.getGeometryN(i) instanceof Polygon polygon) {
                    halves.add(piece.face().piece(piece.partNumber(halves.size()), polygon));
                }
            }
        }
        return halves.isEmpty() ? List.of(piece) : halves;
    }

    private MaterialCut lay(List<CutPiece> pieces, int bought) {
        List<Piece> wanted = pieces.stream().map(this::piece).toList();
        if (material.form() == Form.ROLL && onHand.isEmpty() && bought > 0) {
            CuttingLayout roll = plan(wanted, List.of(onHand.openRoll()));
            if (roll.unplaced().isEmpty() && roll.rollLength() <= onHand.rollLength()) {
                return new MaterialCut(material, pieces, roll, 0, 1);
            }
        }
        CuttingLayout layout = plan(wanted, onHand.with(bought));
        int shelf = Math.min(layout.wholeSheets(), onHand.whole());
        return new MaterialCut(material, pieces, layout, shelf, layout.wholeSheets() - shelf);
    }

    private CuttingLayout plan(List<Piece> wanted, List<Stock> stock) {
        return LayoutPlanner.plan(new CuttingTask(wanted, stock, wishes.cuts(), gap), search);
    }

    /** What runs along the panel runs along the roll. */
    private Piece piece(CutPiece piece) {
        int tenths = OnHand.TENTHS / 1000;
        return new Piece(piece.name(), piece.box().width() * tenths, piece.box().length() * tenths, 1,
                !material.runsOneWay().orElse(false));
    }
}
