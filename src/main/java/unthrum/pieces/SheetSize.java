package unthrum.pieces;

import java.util.List;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.material.Material.Form;

/**
 * The largest piece that the trade's sheet, tile or roll gives, mm. Of a roll the width is fixed and the length is what
 * is on it.
 */
record SheetSize(int length, int width, boolean directed) {

    static SheetSize of(Material material) {
        int first = Box.millimetres(material.size().get(0).si());
        int second = Box.millimetres(material.size().get(1).si());
        boolean directed = material.runsOneWay().orElse(false);
        // The direction runs along the second size of a sheet, as it does along a roll.
        return directed || material.form() == Form.ROLL ? new SheetSize(second, first, directed)
                : new SheetSize(Math.max(first, second), Math.min(first, second), false);
    }

    /** Whether pieces may be joined to one face: a heat shield hangs free and is one sheet. Common practice. */
    static boolean isJoinable(Material material) {
        return material.layer() != Layer.HEAT_SHIELD;
    }

    /** The ways in which a sheet may lie on the panel. */
    List<SheetSize> ways() {
        return directed || length == width ? List.of(this) : List.of(this, new SheetSize(width, length, false));
    }
}
