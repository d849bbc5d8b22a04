package unthrum.effect;

import java.util.List;
import java.util.Optional;

/** What a plan or a finished job does: panel by panel in the survey's order, and to the vehicle. */
public record Effects(List<PanelEffect> panels, VehicleEffect vehicle) {

    public Optional<PanelEffect> panel(String name) {
        return panels.stream().filter(p -> p.panel().equals(name)).findFirst();
    }
}
