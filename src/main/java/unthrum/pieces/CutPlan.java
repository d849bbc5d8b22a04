package unthrum.pieces;

import java.util.List;
import unthrum.plan.Plan;

/**
 * What is cut from what, for a whole vehicle.
 *
 * @param cuts     one for each material that is laid
 * @param onSite   what is cut clear on the vehicle
 * @param shortfalls    the pieces that cannot be cut, with the nearest way out
 * @param supplies what the work takes besides
 */
public record CutPlan(Plan plan, Wishes wishes, List<MaterialCut> cuts, List<OnSite> onSite, List<Shortfall> shortfalls,
                      Supplies supplies) {

    public CutPlan {
        cuts = List.copyOf(cuts);
        onSite = List.copyOf(onSite);
        shortfalls = List.copyOf(shortfalls);
    }

    /** What must be paid for all that is bought, in the catalogue's currency. */
    public double price() {
        return cuts.stream().mapToDouble(MaterialCut::price).sum() + supplies.price();
    }

    /** Of all pieces that are cut, kg. */
    public double mass() {
        return cuts.stream().mapToDouble(MaterialCut::mass).sum();
    }
}
