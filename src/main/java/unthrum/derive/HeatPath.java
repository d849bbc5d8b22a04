package unthrum.derive;

import java.util.List;
import java.util.Optional;
import unthrum.physics.HeatFlow;
import unthrum.physics.HeatLayer;

/**
 * What heat crosses from the outside into the room, layer by layer.
 *
 * @param names  of the layers: 'metal', the materials, 'air gap', and what comes back
 * @param sealed the innermost layer behind which no room air gets, counted from the metal
 */
public record HeatPath(List<String> names, List<HeatLayer> layers, int sealed) {

    /** Nothing where a gap is deeper than the formulas hold. */
    public Optional<HeatFlow> in(Climate climate) {
        return climate.through(layers);
    }

    /** Whether room air reaches the inner face of a layer counted from the metal: taken to be so behind any trim. */
    public boolean reached(int layer) {
        return layer >= sealed;
    }

    /** The coldest face that room air reaches, °C. */
    public double coldest(HeatFlow flow) {
        double coldest = Double.POSITIVE_INFINITY;
        for (int i = sealed; i < layers.size(); i++) {
            coldest = Math.min(coldest, flow.faces().get(i + 1));
        }
        return coldest;
    }
}
