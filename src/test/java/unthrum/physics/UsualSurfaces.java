package unthrum.physics;

import java.util.List;
import java.util.Optional;

/** Heat between tabled surface resistances in ordinary wind, dull faces (ISO 6946, table 7). */
final class UsualSurfaces {

    private UsualSurfaces() {
    }

    static Optional<HeatFlow> through(List<? extends HeatLayer> layers, HeatDirection direction, double outside,
            double inside) {
        return HeatFlow.through(layers, direction, outside, inside, HeatDirection.OUTER_SURFACE,
                direction.innerSurface());
    }

    /** °C. */
    static double innerFace(HeatFlow flow) {
        return flow.faces().get(flow.faces().size() - 1);
    }
}
