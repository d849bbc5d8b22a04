package unthrum.compare;

import java.util.ArrayList;
import java.util.List;
import unthrum.compare.Side.PanelSide;

/**
 * What differs between two sides.
 *
 * @param vehicle what the survey says otherwise of the vehicle, the aims, the limits and the stock
 * @param added   panels that only the second has
 * @param gone    panels that only the first has
 * @param changed panels of both in which anything differs
 * @param aims    what the client's aims gain otherwise
 */
public record Comparison(Side before, Side after, List<FactChange> vehicle, List<PanelSide> added,
                         List<PanelSide> gone, List<PanelChange> changed, List<AimChange> aims) {

    public static Comparison of(Side before, Side after) {
        List<PanelSide> added = after.panels().stream().filter(p -> before.panel(p.name()).isEmpty()).toList();
        List<PanelSide> gone = before.panels().stream().filter(p -> after.panel(p.name()).isEmpty()).toList();
        List<PanelChange> changed = new ArrayList<>();
        before.panels().forEach(p -> after.panel(p.name()).map(q -> PanelChange.of(p, q))
                .filter(PanelChange::isAny).ifPresent(changed::add));
        List<FactChange> vehicle = FactChange.between(before.survey(), after.survey()).stream()
                .filter(f -> !f.key().equals("panels") && !f.key().equals("survey")).toList();
        return new Comparison(before, after, vehicle, added, gone, changed, AimChange.between(before, after));
    }

    public double mass() {
        return after.mass() - before.mass();
    }

    public double price() {
        return after.price() - before.price();
    }

    public boolean isNothing() {
        return vehicle.isEmpty() && added.isEmpty() && gone.isEmpty() && changed.isEmpty() && aims.isEmpty();
    }
}
