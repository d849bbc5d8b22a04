package unthrum.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import unthrum.facts.Panel;
import unthrum.facts.Room;
import unthrum.knowledge.Knowledge;
import unthrum.material.Material;
import unthrum.material.Material.Cell;
import unthrum.physics.HeatFlow;
import unthrum.physics.HeatLayer;
import unthrum.reading.Quantity;
import unthrum.derive.Climate;

/**
 * Metal, layers and, where a trim comes back, the air gap that the stack leaves before it. The trim itself counts for
 * nothing; a gap is taken as closed.
 */
record HeatPath(List<String> names, List<HeatLayer> layers, OptionalDouble brightFace, int sealed) {

    /** Room below this is contact. */
    private static final double THINNEST_GAP = 1e-3;

    static HeatPath of(Panel panel, Room room, Stack stack, Knowledge knowledge) {
        List<String> names = new ArrayList<>(List.of("metal"));
        List<HeatLayer> layers = new ArrayList<>();
        layers.add(new HeatLayer.Solid(panel.gauge(), knowledge.number("usual/skin-conductivity")));
        int sealed = 0;
        for (Material material : stack.layers()) {
            if (material.conductivity().isPresent()) {
                names.add(material.material());
                layers.add(new HeatLayer.Solid(material.thickness().si(), material.conductivity().get().si()));
            }
            sealed = keepsAirOut(material) ? layers.size() - 1 : sealed;
        }
        double dull = knowledge.number("usual/dull-face");
        Optional<Double> face = innermost(stack).flatMap(Material::emissivity).map(Quantity::si).filter(e -> e < dull);
        double gap = room.clearance() - stack.thickness();
        if (!comesBack(room)) {
            return new HeatPath(names, layers, face.map(OptionalDouble::of).orElse(OptionalDouble.empty()), sealed);
        }
        if (gap > THINNEST_GAP) {
            names.add("air gap");
            layers.add(new HeatLayer.AirGap(gap, face.orElse(dull), dull));
        }
        return new HeatPath(names, layers, OptionalDouble.empty(), sealed);
    }

    private static Optional<Material> innermost(Stack stack) {
        List<Material> layers = stack.layers();
        return layers.isEmpty() ? Optional.empty() : Optional.of(layers.get(layers.size() - 1));
    }

    private static boolean keepsAirOut(Material material) {
        return material.bonding().sticks() && (material.cell() == Cell.CLOSED || material.cell() == Cell.SOLID);
    }

    private static boolean comesBack(Room room) {
        return switch (room.to()) {
            case TRIM, LINING, CARPET, MOULDED_MAT, FLOOR_BOARD -> true;
            case DRAWER, WINDOW_GLASS, SEAT, NOTHING -> false;
        };
    }

    Optional<HeatFlow> in(Climate climate) {
        return climate.through(layers, brightFace);
    }

    /** Whether room air reaches the inner face of a layer counted from the metal. */
    boolean reached(int layer) {
        return layer >= sealed;
    }
}
