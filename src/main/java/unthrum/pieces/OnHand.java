package unthrum.pieces;

import java.util.ArrayList;
import java.util.List;
import unthrum.cutting.Stock;
import unthrum.material.Material;
import unthrum.material.Material.Form;
import unthrum.reading.Quantity;
import unthrum.survey.StockEntry;
import unthrum.survey.Survey;

/**
 * What there is of one material to cut from.
 *
 * @param whole   whole sheets, tiles or rolls on the shelf
 * @param offcuts odd pieces and rests of rolls on the shelf
 */
record OnHand(Material material, int whole, List<Stock> offcuts) {

    /** Tenths of a millimetre in a metre: the cutting engine's unit. */
    static final int TENTHS = 10_000;

    static OnHand of(Survey survey, Material material) {
        int whole = 0;
        List<Stock> offcuts = new ArrayList<>();
        for (StockEntry entry : survey.stock().orElse(List.of())) {
            if (entry.material().equals(material.material())) {
                whole += entry.wholeSheets();
                entry.length().ifPresent(length -> offcuts.add(Stock.offcut("rest " + (offcuts.size() + 1),
                        tenths(material.size().get(0)), tenths(length))));
                for (int i = 0; i < entry.offcuts(); i++) {
                    List<Quantity> size = entry.size().orElseThrow();
                    offcuts.add(Stock.offcut("offcut " + (offcuts.size() + 1), tenths(size.get(0)),
                            tenths(size.get(1))));
                }
            }
        }
        return new OnHand(material, whole, List.copyOf(offcuts));
    }

    boolean isEmpty() {
        return whole == 0 && offcuts.isEmpty();
    }

    /** The shelf and so many more whole ones. */
    List<Stock> with(int bought) {
        List<Stock> all = new ArrayList<>(offcuts);
        int count = Math.min(Stock.UNLIMITED, whole + bought);
        if (count > 0) {
            all.add(Stock.sheets(name(), tenths(material.size().get(0)), tenths(material.size().get(1)), count));
        }
        return all;
    }

    /** A roll of open length. */
    Stock openRoll() {
        return Stock.roll(name(), tenths(material.size().get(0)));
    }

    /** What one of it is called: 'sheet', 'tile' or 'roll'. */
    String name() {
        return material.form() == Form.PIECE ? "piece" : unthrum.reading.Words.of(material.form());
    }

    int rollLength() {
        return tenths(material.size().get(1));
    }

    private static int tenths(Quantity length) {
        return (int) Math.round(length.si() * TENTHS);
    }
}
