package unthrum.report;

import java.util.LinkedHashMap;
import java.util.Map;
import unthrum.cutting.SheetLayout;
import unthrum.pieces.CutPlan;
import unthrum.pieces.MaterialCut;

/** The drawings of all sheets, by the names of their files. */
public final class CutDrawings {

    private CutDrawings() {
    }

    public static Map<String, String> of(CutPlan plan) {
        Map<String, String> drawings = new LinkedHashMap<>();
        for (MaterialCut cut : plan.cuts()) {
            int number = 0;
            for (SheetLayout sheet : cut.layout().sheets()) {
                number++;
                String stock = sheet.stock().name();
                String material = cut.material().material();
                String title = English.capital(CutWords.sheet(sheet.stock(), number)) + " of " + material;
                String file = material + "-" + number + "-" + stock;
                drawings.put(file.replaceAll("[^A-Za-z0-9.]+", "-") + ".svg", SheetDrawing.of(cut, sheet, title));
            }
        }
        return drawings;
    }
}
