package unthrum.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.plan.SharingProblem.Goods;
import unthrum.survey.StockEntry;
import unthrum.survey.Survey;

/** What an allotment takes from the shelf and what must be bought. */
final class Shopping {

    private Shopping() {
    }

    /** What lies on the shelf: cm², or pieces of what closes holes. */
    static long onShelf(Survey survey, Material material) {
        double sheet = material.packArea() / material.inPack();
        double area = 0;
        int pieces = 0;
        for (StockEntry entry : survey.stock().orElse(List.of())) {
            if (entry.material().equals(material.material())) {
                area += entry.wholeSheets() * sheet
                        + entry.size().map(s -> entry.offcuts() * s.get(0).si() * s.get(1).si()).orElse(0.0)
                        + entry.length().map(l -> l.si() * material.size().get(0).si()).orElse(0.0);
                pieces += entry.sheets().orElse(0);
            }
        }
        return material.layer() == Layer.SEAL ? pieces : (long) Math.floor(area * SharingProblem.AREA + 1e-6);
    }

    static List<Purchase> of(SharingProblem problem, Allotment allotment) {
        List<Purchase> purchases = new ArrayList<>();
        for (int g = 0; g < problem.goods().size(); g++) {
            long taken = allotment.area(g);
            if (taken > 0) {
                purchases.add(purchase(problem.goods().get(g), taken));
            }
        }
        purchases.sort(Comparator.comparing((Purchase p) -> p.pieces() > 0)
                .thenComparing(p -> p.material().material()));
        return purchases;
    }

    private static Purchase purchase(Goods goods, long taken) {
        boolean byPiece = goods.material().layer() == Layer.SEAL;
        double shelf = Math.min(goods.shelf(), taken) / (byPiece ? 1 : SharingProblem.AREA);
        return byPiece ? new Purchase(goods.material(), 0, (int) taken, shelf, (int) goods.packsFor(taken))
                : new Purchase(goods.material(), taken / SharingProblem.AREA, 0, shelf, (int) goods.packsFor(taken));
    }
}
