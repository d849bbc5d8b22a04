package unthrum.pieces;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import unthrum.cutting.CuttingLayout;
import unthrum.cutting.Placement;
import unthrum.cutting.SheetLayout;
import unthrum.material.Material;
import unthrum.material.Material.Form;

/**
 * The layout of one material.
 *
 * @param pieces all pieces of it, those that there is no room for among them
 * @param layout on which sheet, offcut or roll each lies
 * @param shelf  whole sheets or rolls taken from the shelf
 * @param bought whole sheets or rolls that must be bought
 */
public record MaterialCut(Material material, List<CutPiece> pieces, CuttingLayout layout, int shelf, int bought) {

    private static final double TENTHS_SQUARED = (double) OnHand.TENTHS * OnHand.TENTHS;

    public MaterialCut {
        pieces = List.copyOf(pieces);
    }

    /** The pieces by the names that the layout gives them. */
    public Map<String, CutPiece> byName() {
        return pieces.stream().collect(Collectors.toMap(CutPiece::name, Function.identity()));
    }

    /** The pieces that find no room. */
    public List<CutPiece> unplaced() {
        Set<String> placed = layout.sheets().stream().flatMap(s -> s.placements().stream()).map(Placement::piece)
                .collect(Collectors.toSet());
        return pieces.stream().filter(p -> !placed.contains(p.name())).toList();
    }

    MaterialCut placedOnly() {
        return without(unplaced());
    }

    MaterialCut without(List<CutPiece> without) {
        return new MaterialCut(material, pieces.stream().filter(p -> !without.contains(p)).toList(), layout, shelf,
                bought);
    }

    /** With pieces that are left out. */
    MaterialCut and(List<CutPiece> without) {
        return new MaterialCut(material, Stream.concat(pieces.stream(), without.stream()).toList(), layout, shelf,
                bought);
    }

    double unplacedArea() {
        return unplaced().stream().mapToDouble(p -> p.area() + p.lids()).sum();
    }

    /** The packs to buy. */
    public int packs() {
        return (bought + material.inPack() - 1) / material.inPack();
    }

    public double price() {
        return packs() * material.price().amount().doubleValue();
    }

    /** Of the pieces that are cut, with their loose lids, m². */
    public double area() {
        return pieces.stream().mapToDouble(p -> p.area() + p.lids()).sum() - unplacedArea();
    }

    public double mass() {
        return area() * material.surfaceDensity().si();
    }

    /** What is cut into: sheets and offcuts whole, of a roll the length that is cut off, m². */
    public double stockArea() {
        return layout.sheets().stream().mapToDouble(this::cutInto).sum();
    }

    private double cutInto(SheetLayout sheet) {
        long height = material.form() == Form.ROLL ? sheet.usedHeight() : sheet.stock().height();
        return height * (double) sheet.stock().width() / TENTHS_SQUARED;
    }

    /** Length cut off rolls, m. */
    public double rollLength() {
        return layout.sheets().stream().mapToInt(SheetLayout::usedHeight).sum() / (double) OnHand.TENTHS;
    }

    /** The largest offcut that is left whole, m²; of a roll none, the rest stays on it. */
    public double offcut() {
        return material.form() == Form.ROLL ? 0 : layout.largestOffcut() / TENTHS_SQUARED;
    }

    /** The share of what is cut into that is neither piece nor the largest offcut. */
    public double waste() {
        return stockArea() == 0 ? 0 : 1 - (area() + offcut()) / stockArea();
    }
}
